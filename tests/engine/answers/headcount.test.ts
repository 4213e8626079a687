/** The headcount question answered by all its rules together. */
import { expect, test } from 'vitest';
import { answered } from '../../helpers/answered.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const on = '2026-05-08';
const whites = group({
  dead: 1,
  losses: [{ on, line: 3, count: 2, cause: 'hawk' }],
  processed: [{ on, line: 4, count: 7, dressed: null }],
});
const reds = group({ name: 'reds', line: 2, boxed: 20 });

test('counts each group and all together', async () => {
  const { parts, results } = await answered(stateOf({ groups: [whites, reds] }), 'headcount');
  expect(parts.map((part) => [part.group, part.rule])).toEqual([
    ['whites', 'headcount/counted'],
    ['reds', 'headcount/counted'],
  ]);
  expect(results.map(({ id, group: of, value }) => [id, of, value])).toEqual([
    ['alive', null, 60],
    ['alive', 'whites', 40],
    ['alive', 'reds', 20],
    ['lost', null, 2],
    ['lost', 'whites', 2],
    ['lost', 'reds', 0],
    ['age', 'whites', 7],
    ['age', 'reds', 7],
  ]);
});

test('brings the count at lock-up with it', async () => {
  const { parts } = await answered(stateOf(), 'headcount');
  expect(parts[0]?.steps.map((step) => [step.id, step.at, step.says.values])).toEqual([
    [
      'headcount/count-at-lock-up',
      'evening',
      { group: { value: 'whites', unit: null }, alive: { value: 50, unit: 'bird' } },
    ],
  ]);
});

test.each([
  [50, 'headcount/none-left'],
  [51, 'headcount/more-gone-than-came'],
])('%i processed of 50: %s', async (count, rule) => {
  const groups = [group({ processed: [{ on, line: 4, count, dressed: null }] })];
  const { parts } = await answered(stateOf({ groups }), 'headcount', ['whites']);
  expect([parts[0]?.rule, parts[0]?.steps]).toEqual([rule, []]);
});

test.each([
  [20, ['headcount/promised'], []],
  [21, [], ['headcount/promised-too-many']],
])('%i promised of 20', async (count, remarks, cautions) => {
  const shares = [{ who: 'ann', count, step: 'promised' as const, on, line: 5, paid: null }];
  const { parts } = await answered(stateOf({ groups: [reds], shares }), 'headcount');
  expect(
    parts.map((part) => [part.remarks.map((each) => each.rule), part.cautions.map((each) => each.rule)]),
  ).toEqual([[remarks, cautions]]);
});
