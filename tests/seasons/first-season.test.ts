/** Ten weeks lived day by day through the shell: the round never contradicts the single answers, and never leaves a gap. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openFile } from '../../engine/index.ts';
import { penside } from '../helpers/program.ts';
import { rulebook } from '../helpers/rulebook-of.ts';
import { flipsIn } from './flips.ts';
import { foundIn, type LivedDay, liveDay, rulesIn, type Script, type Step } from './keeper.ts';

const first = '2026-05-05';
const days = 70;
const folder = mkdtempSync(join(tmpdir(), 'penside-season-'));
const file = join(folder, 'flock.jsonl');
const lived: LivedDay[] = [];

/** An invented spring: nights warm up from 40 to 62 °F, with a cold spell on days 24 to 26. */
const lowOn = (day: number): number => (day >= 24 && day <= 26 ? 36 : Math.min(62, 42 + Math.round(day / 3)));

const events: Readonly<Record<number, readonly string[]>> = {
  0: [
    'the brooder is 5 by 8 ft',
    'pen is 10 by 12 ft',
    'we have 2 pens',
    'the pen is covered',
    'the ground is 100 by 200 ft',
    'bag is 50 lb',
    'bought 4 bags of starter at 19.50',
    '40 whites hatched yesterday came this morning, none dead',
  ],
  2: ['lost one white, weak from the start'],
  14: ['25 slow reds hatched yesterday came this morning'],
  15: ['bought 10 bags of grower at 20'],
  18: ['weighed 5 whites: 1.0 1.1 0.9 1.2 1.0'],
  33: ['weighed 6 whites: 2.6 2.8 2.4 3.0 2.7 2.5'],
  37: ['lost 2 whites to a hawk'],
  40: ['bought 12 bags of grower at 20'],
  50: ['weighed 6 whites: 5.0 5.2 4.8 5.4 5.1 4.9'],
  60: ['processed 37 whites, 170 lb in all'],
};

const script: Script = (day) => [...(events[day] ?? []), `low of ${lowOn(day)} F tonight`];

const about = (steps: readonly Step[], rule: string): readonly Step[] =>
  steps.filter((step) => step.rule.startsWith(`${rule}/`));
const groupsIn = (answer: LivedDay['answers'][string] | undefined, id: string): readonly (string | null)[] =>
  foundIn(answer)
    .filter((result) => result.id === id && result.group !== null)
    .map((result) => result.group);

beforeAll(() => {
  for (let day = 0; day < days; day += 1) lived.push(liveDay(file, first, day, script));
}, 300_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a season of ten weeks', () => {
  test('everything told was written', () => {
    const failed = lived.flatMap(({ on, told }) =>
      told.filter((run) => run.exit !== 0 || run.err !== '').map((run) => [on, run.out, run.err]),
    );
    expect(failed).toEqual([]);
  });

  test('the file has nothing wrong at the end', () => {
    const run = penside(['check', '--json'], { file, today: lived.at(-1)?.on ?? first });
    expect(run).toEqual({ out: '', err: '', exit: 0 });
  });

  test('every group with birds is fed once a day, by the amount that the single answer gives', () => {
    for (const { on, round, answers } of lived) {
      const fed = about(round, 'feed-amount').map((step) => /the (\S+) about/.exec(step.says)?.[1] ?? '');
      expect([on, [...fed].sort()]).toEqual([on, [...groupsIn(answers['feed-amount'], 'feed')].sort()]);
    }
  });

  test('the pen is to be moved exactly when the single answer says so', () => {
    for (const { on, round, answers } of lived) {
      const says = answers['pen-moves']?.verdict === 'yes';
      expect([on, about(round, 'pen-moves').some((step) => !step.done)]).toEqual([on, says]);
    }
  });

  test('birds are sent out exactly when the single answer says that today is the first day for them', () => {
    for (const { on, round, answers } of lived) {
      const sent = about(round, 'go-out').filter((step) => step.rule === 'go-out/may-go');
      const groups = sent.map((step) => /^Move the (\S+) out/.exec(step.says)?.[1]);
      const may = rulesIn(answers['go-out']).includes('go-out/may-go');
      const first = foundIn(answers['go-out'])
        .filter((result) => may && result.id === 'first-day' && result.value === on)
        .map((result) => result.group);
      expect([on, groups]).toEqual([on, first]);
    }
  });

  test('what was done and told is ticked off', () => {
    for (const { on, after } of lived) {
      const open = after.filter((step) => !step.done && /^(feed-amount|pen-moves)\//.test(step.rule));
      expect([on, open]).toEqual([on, []]);
    }
  });

  test('no task speaks of what is not known, and none is for birds that are gone', () => {
    for (const { on, round, day } of lived) {
      const bad = round.filter(
        (step) => /not known|\{|NaN|undefined/.test(step.says) || (day > 60 && /whites/.test(step.says)),
      );
      expect([on, bad]).toEqual([on, []]);
    }
  });

  test('every turn of a yes or a no from one morning to the next has a cause, and undoing that cause alone undoes it', async () => {
    const before = readFileSync(file, 'utf8');
    const flips = await flipsIn(openFile(rulebook().book, file), first, days);
    expect(flips.length).toBeGreaterThan(10);
    expect(flips.filter(({ isUndone }) => !isUndone)).toEqual([]);
    expect(readFileSync(file, 'utf8')).toBe(before);
  }, 120_000);

  test('both groups came out of the brooder, at an age and on a night that the rules allow', () => {
    const out = lived.flatMap(({ day, round }) =>
      round
        .filter((step) => step.rule === 'go-out/may-go')
        .map((step) => [/the (\S+) out/.exec(step.says)?.[1], day, lowOn(day)]),
    );
    expect(out).toMatchInlineSnapshot(`
      [
        [
          "whites",
          28,
          51,
        ],
        [
          "reds",
          42,
          56,
        ],
      ]
    `);
  });
});
