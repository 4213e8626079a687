/** Every slot right: what was reached on voices that nothing was mended by, as a floor. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { lexiconFor } from '../helpers/learned.ts';
import { readRules } from '../helpers/read-rules.ts';
import { placeFor } from './place.ts';
import { countSlots, type Slotted, scoreSlots } from './slots.ts';

const about = placeFor(readRules());
const lexicon = lexiconFor(about.book);

const linesOf = (voice: string): readonly Slotted[] =>
  readFileSync(new URL(`./aside/${voice}.jsonl`, import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as Slotted);

// No line of these was read by anybody who builds; raise the floors when they are understood better.
const voices = ['apprentice', 'engineerswidow', 'roofer', 'schoolsecretary'];
/** Some hundred suppositions are each resolved against a flock. */
const patience = 30_000;

test(
  'records and suppositions keep what was reached',
  () => {
    const scored = scoreSlots(voices.flatMap(linesOf), about, lexicon);
    const records = countSlots(scored.filter(({ isSupposing }) => !isSupposing));
    const suppositions = countSlots(scored.filter(({ isSupposing }) => isSupposing));
    const share = (part: number, whole: number): number => part / whole;
    expect(share(records.right, records.heard)).toBeGreaterThanOrEqual(0.87);
    expect(share(records.wrong, records.heard)).toBeLessThanOrEqual(0.06);
    expect(share(suppositions.right, suppositions.heard)).toBeGreaterThanOrEqual(0.75);
    expect(share(suppositions.wrong, suppositions.heard)).toBeLessThanOrEqual(0.16);
  },
  patience,
);
