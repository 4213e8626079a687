/** What is on record as rows: each list whole, corrections and undos taken into account, masses in the unit of the place. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { lists, rowsOf } from '../../../cli/talk/lists.ts';
import { openOwn } from '../../../cli/talk/open-flock.ts';
import { nothingYet } from '../../../cli/talk/reply.ts';
import { turn } from '../../../cli/talk/turn.ts';
import { printOf } from '../../../engine/index.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const lexicon = lexiconFor(shipped);
const today = '2026-06-20';
const now = `${today}T07:00:00-04:00`;

let folder = '';
let path = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  path = join(folder, 'flock.jsonl');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const came = {
  kind: 'arrive',
  on: '2026-04-09',
  group: 'whites',
  count: 50,
  bird: 'fast',
  hatched: '2026-04-07',
  by: 'Nell',
};
const noted = (...lines: readonly object[]) => {
  writeFileSync(path, lines.map((line) => `${JSON.stringify(line)}\n`).join(''));
  const opening = { book: shipped, lexicon, path, today, asOf: null, now, by: null };
  return openOwn({ ...opening, rulesFolder: join(folder, 'rulebooks') });
};
const rows = (name: string, ...lines: readonly object[]) => {
  const list = lists.find((each) => each.name === name);
  if (list === undefined) throw new Error(`no list ${name}`);
  return rowsOf(noted(came, ...lines), list);
};

test('entries are those that count, as they were put right, in words', () => {
  const loss = { kind: 'loss', on: '2026-05-02', group: 'whites', count: 2, cause: 'hawk' };
  const note = {
    kind: 'note',
    on: '2026-05-03',
    words: 'gate wants oil',
    written: '2026-05-03T07:00:00-04:00',
  };
  const [corrected, undone] = [printOf(JSON.stringify(loss)), printOf(JSON.stringify(note))];
  const all = rows(
    'entries',
    loss,
    note,
    { kind: 'correct', on: '2026-05-04', line: 2, print: corrected, with: { count: 3 } },
    { kind: 'undo', on: '2026-05-04', line: 3, print: undone },
    { kind: 'feed', on: '2026-05-04', amount: '25 lb', ration: 'grower', by: 'Sam' },
  );
  const rest = { by: null, written: null };
  expect(all).toEqual([
    {
      ...rest,
      line: 1,
      on: '2026-04-09',
      kind: 'arrive',
      group: 'whites',
      says: '50 whites came, fast growing, hatched Tuesday 7 April.',
      by: 'Nell',
    },
    { ...rest, line: 2, on: '2026-05-02', kind: 'loss', group: 'whites', says: '3 whites lost, cause hawk.' },
    {
      ...rest,
      line: 6,
      on: '2026-05-04',
      kind: 'feed',
      group: null,
      says: '25 lb of grower fed.',
      by: 'Sam',
    },
  ]);
});

test('losses are in the order of their days', () => {
  const lost = (on: string, count: number) => ({ kind: 'loss', on, group: 'whites', count });
  expect(
    rows('losses', lost('2026-05-09', 1), { ...lost('2026-05-02', 2), cause: 'hawk', by: 'Sam' }),
  ).toEqual([
    { on: '2026-05-02', group: 'whites', count: 2, cause: 'hawk', by: 'Sam', line: 3 },
    { on: '2026-05-09', group: 'whites', count: 1, cause: 'unknown', by: null, line: 2 },
  ]);
});

test('feed and weights are in pounds, and in kilograms where the place is metric', () => {
  const fed = { kind: 'feed', on: '2026-05-04', amount: '25 lb', ration: 'grower' };
  const weighed = { kind: 'weigh', on: '2026-05-05', group: 'whites', weights: ['2 lb', '4 lb', '6 lb'] };
  const metric = { kind: 'setting', on: '2026-04-09', what: 'units-system', value: 'metric' };
  expect([rows('feed', fed), rows('feed', metric, fed), rows('weights', weighed)]).toEqual([
    [{ on: '2026-05-04', group: null, amount: 25, unit: 'lb', ration: 'grower', by: null, line: 2 }],
    [{ on: '2026-05-04', group: null, amount: 11.33980925, unit: 'kg', ration: 'grower', by: null, line: 3 }],
    [
      {
        on: '2026-05-05',
        group: 'whites',
        count: 3,
        mean: 4,
        // Two lie 2 from the mean, and the divisor is 3 less 1: the root of (2² + 2²) / 2.
        spread: 2,
        unit: 'lb',
        by: null,
        line: 2,
      },
    ],
  ]);
});

test('purchases keep the exact price', () => {
  const bought = {
    kind: 'buy',
    on: '2026-04-30',
    what: 'feed',
    bags: '6 bags',
    amount: '300 lb',
    price: '117.00',
  };
  expect(rows('purchases', bought)).toEqual([
    {
      on: '2026-04-30',
      what: 'feed',
      ration: null,
      group: null,
      count: null,
      bags: 6,
      amount: 300,
      unit: 'lb',
      price: '117.00',
      by: null,
      line: 2,
    },
  ]);
});

test('the freezer is what went in and out; what is only promised, or paid for, is neither', () => {
  const share = { kind: 'share', on: '2026-06-05', who: 'the neighbour', count: 4 };
  const freezer = rows(
    'freezer',
    { kind: 'eat', on: '2026-06-10', count: 1, weight: '4.5 lb' },
    { ...share, step: 'promised' },
    { ...share, on: '2026-06-12', step: 'handed' },
    { ...share, on: '2026-06-12', step: 'paid', paid: '80.00' },
    { kind: 'process', on: '2026-06-02', group: 'whites', count: 12, dressed: '54 lb' },
  );
  const rest = { unit: 'lb', group: null, who: null, amount: null, by: null };
  expect(freezer).toEqual([
    { ...rest, on: '2026-06-02', what: 'in', count: 12, amount: 54, group: 'whites', line: 6 },
    { ...rest, on: '2026-06-10', what: 'eaten', count: 1, amount: 4.5, line: 2 },
    { ...rest, on: '2026-06-12', what: 'handed over', count: 4, unit: null, who: 'the neighbour', line: 4 },
  ]);
});

test('advice is what was answered where it is noted, one row a group', async () => {
  const flock = noted(came);
  const manner = { on: today, group: null, write: true, notes: true };
  const { memory } = await turn(flock, 'how many birds do I have', nothingYet, manner);
  const advice = lists.find(({ name }) => name === 'advice');
  if (advice === undefined || memory.answer === null) throw new Error('nothing was noted');
  expect(rowsOf(flock, advice)).toEqual([
    {
      at: now,
      asked: 'how many birds do I have',
      question: 'headcount',
      on: today,
      group: 'whites',
      verdict: 'amount',
      rule: memory.answer.parts[0]?.rule,
      ref: memory.answer.ref,
    },
  ]);
});

test('every list has rows of just its columns, also where there is nothing', () => {
  expect(lists.map((list) => rowsOf(noted(), list))).toEqual(lists.map(() => []));
  expect(new Set(lists.map(({ name }) => name)).size).toBe(lists.length);
});
