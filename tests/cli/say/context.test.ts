/** A line in its surroundings, whole as it is read and as data. */
import { expect, test } from 'vitest';
import { type Context, contextAsJson, sayContext } from '../../../cli/say/context.ts';
import { plain } from '../../../cli/say/plain.ts';
import type { Speech } from '../../../cli/say/speech.ts';
import { printOf } from '../../../engine/index.ts';
import { flockOf, type Line, shipped } from '../../helpers/flock-of.ts';

const today = '2026-05-14';
const speech: Speech = { book: shipped, system: 'us', currency: '$', today };
const came: Line = {
  kind: 'arrive',
  on: '2026-04-09',
  group: 'whites',
  count: 50,
  bird: 'fast',
  hatched: '2026-04-07',
};
const lost: Line = {
  kind: 'loss',
  on: '2026-05-02',
  group: 'whites',
  count: 2,
  cause: 'hawk',
  by: 'Sam',
  written: '2026-05-02T19:30:00-04:00',
};
const undo: Line = { kind: 'undo', on: '2026-05-03', line: 2, print: printOf(JSON.stringify(lost)) };

const contextOf = async (
  line: number,
  around: readonly number[],
  ...lines: readonly Line[]
): Promise<Context> => {
  const engine = flockOf(...lines);
  return {
    line,
    lines: engine.lines,
    around,
    entries: new Map(engine.believed().map((entry) => [entry.line, entry])),
    stands: engine.standing().some((entry) => entry.line === line),
    bearing: await engine.audit(null).bearing(line, ['headcount'], { on: today, asOf: null, lines: null }),
  };
};

test('what stands there, who wrote it, what is beside it, what it moved, and what it turned', async () => {
  expect(plain(sayContext(speech, await contextOf(2, [1], came, lost)), 100)).toEqual([
    'Line 2: 2 whites lost, cause hawk, on Saturday 2 May.',
    'Written by Sam on Saturday 2 May at 19:30.',
    'It counts.',
    'Around it',
    'Line 1: 50 whites came, fast growing, hatched Tuesday 7 April, on Thursday 9 April.',
    'What it moved',
    'Birds lost since arrival (whites): 2 birds, without it 0 birds.',
    'Answers of Thursday 14 May that would be others without it',
    'How many birds there are, where and how old: The whites: 48 birds alive, 37 days old, in the',
    'brooder. Without it: The whites: 50 birds alive, 37 days old, in the brooder.',
  ]);
});

test('a record taken back says by which line, also where joining two copies moved it', async () => {
  const moved = { ...undo, line: 1 };
  expect(plain(sayContext(speech, await contextOf(2, [3], came, lost, moved)), 100)).toEqual([
    'Line 2: 2 whites lost, cause hawk, on Saturday 2 May.',
    'Written by Sam on Saturday 2 May at 19:30.',
    'It was taken back on line 3.',
    'Around it',
    'Line 3: takes line 2 back.',
    'No answer of today rests on it.',
  ]);
});

test('a line that is no entry is shown as it stands, with what it makes doubtful', async () => {
  const broken = { kind: 'los', on: '2026-05-02' };
  expect(plain(sayContext(speech, await contextOf(2, [], came, broken)), 100)).toEqual([
    'Line 2: {"kind":"los","on":"2026-05-02"}',
    'It is no entry that can be read: nothing is made of it.',
    'It makes doubtful: how many birds there are, where and how old.',
  ]);
});

test('an undo says what it is about', async () => {
  const said = plain(sayContext(speech, await contextOf(3, [], came, lost, undo)), 100);
  expect(said.slice(0, 2)).toEqual(['Line 3: takes line 2 back.', 'It is about line 2.']);
});

test('the same as data', async () => {
  const data = contextAsJson(speech, await contextOf(2, [1], came, lost));
  expect(data).toMatchObject({
    line: 2,
    raw: JSON.stringify(lost),
    kind: 'loss',
    on: '2026-05-02',
    by: 'Sam',
    written: '2026-05-02T19:30:00-04:00',
    counts: true,
    of: null,
    revised: [],
    around: [{ line: 1, raw: JSON.stringify(came) }],
    answers: [
      {
        question: 'headcount',
        differences: expect.arrayContaining([
          { what: 'result', id: 'alive', group: 'whites', value: 48, without: 50, unit: 'bird' },
        ]),
      },
    ],
  });
});
