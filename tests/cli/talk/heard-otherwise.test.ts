/** Words that were heard otherwise when they were answered: that is told as the cause, proved by asking what they were heard as. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { openOwn } from '../../../cli/talk/open-flock.ts';
import { type Memory, nothingYet, type Reply } from '../../../cli/talk/reply.ts';
import { turn } from '../../../cli/talk/turn.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const lexicon = lexiconFor(shipped);
/** Two days on which nothing that was told makes a difference to whether they can go out. */
const [wednesday, thursday] = ['2026-05-13', '2026-05-14'];
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  writeFileSync(join(folder, 'flock.jsonl'), demoLedger(thursday));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const flockOn = (today: string) =>
  openOwn({
    book: shipped,
    lexicon,
    path: join(folder, 'flock.jsonl'),
    today,
    asOf: null,
    now: `${today}T09:00:00+00:00`,
    by: null,
    rulesFolder: join(folder, 'rulebooks'),
  });

const say = (today: string, words: string, memory: Memory = nothingYet): Promise<Reply> =>
  turn(flockOn(today), words, memory, { on: today, group: null, write: true, notes: true });

const advice = (today: string) => {
  const flock = flockOn(today);
  return flock
    .engine()
    .audit(flock.advice?.rulesFolder ?? null)
    .log().advice;
};

/** Notes an answer about some groups as given to words that an earlier lexicon heard so. */
const noteAsHeard = async (words: string, groups: readonly string[], alone: boolean): Promise<void> => {
  const flock = flockOn(wednesday);
  const answer = await flock.engine().ask({
    question: 'go-out',
    groups,
    moment: { on: wednesday, asOf: null, lines: null },
    until: null,
    supposing: [],
  });
  const audit = flock.engine().audit(flock.advice?.rulesFolder ?? null);
  await audit.note(answer, words, `${wednesday}T09:00:00+00:00`, alone);
};

const sinceWednesday = async () => {
  const asked = await say(thursday, 'can the reds go out');
  const { tokens, json } = await say(thursday, 'what changed since yesterday', asked.memory);
  return {
    reasons: tokens.filter(({ t }) => t === 'reason'),
    changes: JSON.parse(JSON.stringify(json.difference)).changes,
  };
};

test('words that stand by themselves are noted as such, and others are not', async () => {
  const first = await say(thursday, 'can the reds go out');
  await say(thursday, 'and the whites?', first.memory);
  expect(advice(thursday).map(({ asked, alone }) => [asked, alone])).toEqual([
    ['can the reds go out', true],
    ['and the whites?', undefined],
  ]);
});

test('heard for another group than today: the cause of the difference', async () => {
  await noteAsHeard('can the reds go out', ['whites'], true);
  const { reasons, changes } = await sinceWednesday();
  const cause =
    '"can the reds go out" was heard as whether a group can go out to the pen for the whites, and is heard now as whether a group can go out to the pen for the reds';
  const verdicts = changes[0].differences.filter((each: { what: string }) => each.what === 'verdict');
  expect(
    verdicts.map(
      (each: {
        group: string;
        causes: { kind: string; says: string }[];
        tried: { kind: string; undoes: boolean }[];
      }) => [
        each.group,
        each.causes.map(({ kind, says }) => [kind, says]),
        each.tried.filter(({ kind }) => kind === 'heard').map(({ undoes }) => undoes),
      ],
    ),
  ).toEqual([
    ['whites', [['heard', cause]], [true]],
    ['reds', [['heard', cause]], [true]],
  ]);
  expect(reasons).toEqual([
    { t: 'reason', n: 1, text: `Because ${cause}. Without that: as it was.`, outcome: null },
  ]);
});

test.each([
  ['heard the same as today', ['reds'], true],
  ['of a log that does not say whether they stood alone', ['whites'], false],
])('words %s are no cause', async (_, groups, alone) => {
  await noteAsHeard('can the reds go out', groups, alone);
  const { changes } = await sinceWednesday();
  expect(JSON.stringify(changes)).not.toContain('"heard"');
});
