/** What one line does: the values that come straight from it, the answers that turn without it, and those that only read it. */
import { expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { openText, printOf } from '../../../engine/index.ts';
import type { Bearing } from '../../../engine/types.ts';
import { flockOf, type Line, shipped } from '../../helpers/flock-of.ts';

const today = '2026-05-14';
const came: Line = {
  kind: 'arrive',
  on: '2026-04-09',
  group: 'whites',
  count: 50,
  bird: 'fast',
  hatched: '2026-04-07',
};
const lost: Line = { kind: 'loss', on: '2026-05-02', group: 'whites', count: 2, cause: 'hawk' };
const about = (line: number, of: Line, more: Line): Line => ({
  on: '2026-05-03',
  line,
  print: printOf(JSON.stringify(of)),
  ...more,
});

const bearingOf = (line: number, questions: readonly string[], ...lines: readonly Line[]): Promise<Bearing> =>
  flockOf(...lines)
    .audit(null)
    .bearing(line, questions, { on: today, asOf: null, lines: null });
/** The differences of the only answer, as short as they can be said. */
const turned = ({ answers }: Bearing) =>
  answers.flatMap(({ differences }) => differences.map(({ what, id, from, to }) => [what, id, from, to]));

test('a loss moves how many there are, and the answer that says so', async () => {
  const bearing = await bearingOf(2, ['headcount'], came, lost);
  expect([bearing.of, bearing.revised]).toEqual([null, []]);
  expect(bearing.moved.find(({ fact }) => fact === 'lost')).toEqual({
    fact: 'lost',
    group: 'whites',
    unit: 'bird',
    value: 2,
    without: 0,
  });
  expect(turned(bearing)).toContainEqual(['result', 'alive', 50, 48]);
});

test('a note moves nothing, and no answer rests on it', async () => {
  const note = { kind: 'note', on: '2026-05-02', words: 'gate wants oil' };
  expect(await bearingOf(2, ['headcount'], came, note)).toEqual({
    line: 2,
    of: null,
    revised: [],
    moved: [],
    answers: [],
  });
});

test('a record that was taken back does nothing any more; the undo does what it undid', async () => {
  const lines = [came, lost, about(2, lost, { kind: 'undo' })];
  const [undone, undo] = [
    await bearingOf(2, ['headcount'], ...lines),
    await bearingOf(3, ['headcount'], ...lines),
  ];
  expect([undone.revised, turned(undone)]).toEqual([[{ line: 3, how: 'undone' }], []]);
  expect([undo.of, turned(undo)]).toEqual([2, expect.arrayContaining([['result', 'alive', 48, 50]])]);
});

test('an undo that was itself taken back is not said of the line it was about', async () => {
  const undo = about(2, lost, { kind: 'undo' });
  const lines = [came, lost, undo, about(3, undo, { kind: 'undo' })];
  expect((await bearingOf(2, ['headcount'], ...lines)).revised).toEqual([]);
});

test('a correction is told of by the line it put right, and does the difference', async () => {
  const lines = [came, lost, about(2, lost, { kind: 'correct', with: { count: 5 } })];
  const [corrected, correction] = [
    await bearingOf(2, ['headcount'], ...lines),
    await bearingOf(3, ['headcount'], ...lines),
  ];
  expect([corrected.revised, turned(correction)]).toEqual([
    [{ line: 3, how: 'corrected' }],
    expect.arrayContaining([['result', 'alive', 48, 45]]),
  ]);
});

test('answers that would be others come before those that only read it', async () => {
  const weighed = { kind: 'weigh', on: '2026-05-10', group: 'whites', weights: ['2 lb', '2.2 lb', '2.4 lb'] };
  const { answers } = await bearingOf(2, ['feed-kind', 'process-when'], came, weighed);
  expect(answers.map(({ question, differences }) => [question, differences.length > 0])).toEqual([
    ['process-when', true],
    ['feed-kind', false],
  ]);
});

test('a line that cannot be read bears on the answers that it makes doubtful', async () => {
  const broken = { kind: 'loss', on: '2026-05-02', group: 'whites', count: 'two' };
  const { answers } = await bearingOf(2, ['headcount', 'freezer-room'], came, broken);
  expect(answers.map(({ question, is }) => [question, is.problems.map(({ code }) => code)])).toContainEqual([
    'headcount',
    ['wrong-type'],
  ]);
});

test('leaving a line out unread misses nothing that asking again finds', async () => {
  const engine = openText(shipped, 'demo', demoLedger(today));
  const moment = { on: today, asOf: null, lines: null };
  const questions = ['headcount', 'go-out', 'feed-buy', 'room'];
  const ask = (question: string, without: readonly number[]) =>
    engine.ask({ question, groups: [], moment: { ...moment, without }, until: null, supposing: [] });
  for (const line of [3, 5, 17, 23, 27]) {
    const { answers } = await engine.audit(null).bearing(line, questions, moment);
    const resting = answers.map(({ question }) => question);
    for (const question of questions.filter((each) => !resting.includes(each))) {
      const [is, without] = [await ask(question, []), await ask(question, [line])];
      expect(without.results).toEqual(is.results);
    }
  }
});
