/** Plans found by the rules of the season: what is accepted, what is refused and by which rule, and how fast. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Answer, Supposition, Value } from '../../../engine/types.ts';
import { ask, flockOf, type Line } from '../../helpers/flock-of.ts';

const on = '2026-02-14';
const set = (what: string, value: string): Line => ({ kind: 'setting', on: '2026-02-01', what, value });
const place = [
  set('pen', '10 ft x 12 ft'),
  set('brooder', '4 ft x 6 ft'),
  set('ground', '100 ft x 200 ft'),
  set('freezer', '14 ft3'),
];
const told = (facts: Readonly<Record<string, Value>>): readonly Supposition[] =>
  Object.entries(facts).map(([fact, value]) => ({ what: { fact }, value, adds: false }));
const plan = (facts: Readonly<Record<string, Value>>, ...lines: readonly Line[]): Promise<Answer> =>
  ask(flockOf(...place, ...lines), 'season-plan', on, { supposing: told(facts) });

/** Every part as the group it is for and the rule that decided. */
const decided = ({ parts }: Answer) => parts.map((part) => [part.group, part.verdict, part.rule]);
const result = ({ results }: Answer, id: string, group: string): Value | undefined =>
  results.find((each) => each.id === id && each.group === group)?.value;

describe('a plan', () => {
  test('of one batch in the year tells the best and two others beside it', async () => {
    const answer = await plan({ 'birds-wanted': 20, 'batches-asked': 1 });
    expect(decided(answer)).toEqual([
      ['first batch', 'list', 'season-plan/goes'],
      ['first batch of another plan', 'list', 'season-plan/goes'],
      ['first batch of a third plan', 'list', 'season-plan/goes'],
    ]);
    expect(answer.parts.map((part) => part.cautions.length)).toEqual([0, 0, 0]);
  });

  test('has every date in order, and birds that add up', async () => {
    const answer = await plan({ 'birds-wanted': 40, 'batches-asked': 2 });
    for (const batch of ['first batch', 'second batch']) {
      const dates = ['order-by', 'hatch', 'out', 'process'].map((id) => String(result(answer, id, batch)));
      expect(dates).toEqual([...dates].sort());
      expect(result(answer, 'birds', batch)).toBe(20);
    }
    expect(
      String(result(answer, 'hatch', 'second batch')) > String(result(answer, 'hatch', 'first batch')),
    ).toBe(true);
  });

  test('falls into batches by what the place takes at once', async () => {
    const answer = await plan({ 'birds-wanted': 50 });
    const batches = answer.parts.filter((part) => part.reasons.length > 0).map((part) => part.group);
    expect(batches).toEqual(['first batch', 'second batch']);
  });

  test('plans in turn the kinds of the groups that are named', async () => {
    const whites = {
      kind: 'arrive',
      on: '2026-02-10',
      group: 'whites',
      count: 10,
      bird: 'fast',
      hatched: '2026-02-09',
    };
    const reds = { ...whites, group: 'reds', bird: 'slow' };
    const flock = flockOf(...place, set('pens', '3'), whites, reds);
    const supposing = told({ 'birds-wanted': 20 });
    const answer = await ask(flock, 'season-plan', on, { groups: ['whites', 'reds'], supposing });
    const kinds = answer.workings.filter((step) => step.fact === 'batch-kind').map((step) => step.value);
    expect(answer.parts.slice(0, 2).map((part) => part.group)).toEqual(['first batch', 'second batch']);
    expect(new Set(kinds)).toEqual(new Set(['fast', 'slow']));
  });
});

describe('meat by a day', () => {
  test('takes the latest hatch that is ready by then', async () => {
    const answer = await plan({ 'birds-wanted': 20, 'season-day': '2026-10-15' });
    const ready = String(result(answer, 'process', 'first batch'));
    expect(decided(answer)).toEqual([['first batch', 'list', 'season-plan/goes']]);
    expect(ready <= '2026-10-15' && ready > '2026-10-08').toBe(true);
  });

  test('too soon: the rule that refuses, and the nearest day that passes', async () => {
    const answer = await plan({ 'birds-wanted': 20, 'season-day': '2026-03-20' });
    expect(decided(answer)).toEqual([
      ['first batch', 'no', 'season-plan/too-late-to-order'],
      ['first batch moved', 'list', 'season-plan/goes'],
    ]);
  });
});

describe('a day or a month to begin with', () => {
  const begin = (day: string, ...lines: readonly Line[]): Promise<Answer> =>
    plan({ 'birds-wanted': 20, 'batches-asked': 1, 'season-day': day, 'season-begins': 'yes' }, ...lines);

  test.each([
    ['2026-02-20', 'season-plan/too-late-to-order', []],
    ['2026-11-07', 'season-plan/nights-too-cold', []],
    ['2026-12-26', 'season-plan/too-cold-to-brood', [set('low-january', '-10 F')]],
    [
      '2026-06-06',
      'season-plan/away-at-worst',
      [set('away-from', '2026-06-08'), set('back-on', '2026-06-12')],
    ],
    ['2026-06-06', 'season-plan/brooder-full', [set('brooder', '3 ft x 3 ft')]],
    ['2026-06-06', 'season-plan/pens-full', [set('pen', '4 ft x 5 ft')]],
    ['2026-06-06', 'season-plan/ground-short', [set('ground', '30 ft x 30 ft')]],
    ['2026-06-06', 'season-plan/too-hot', [set('high-july', '100 F')]],
    ['2026-06-06', 'season-plan/freezer-full', [set('freezer', '2 ft3')]],
  ] as const)('%s: %s', async (day, rule, lines) => {
    const answer = await begin(day, ...lines);
    expect(decided(answer)[0]).toEqual(['first batch', 'no', rule]);
  });

  test('a day that passes is planned as asked', async () => {
    const answer = await begin('2026-06-06');
    expect(decided(answer)).toEqual([['first batch', 'list', 'season-plan/goes']]);
    expect(result(answer, 'hatch', 'first batch')).toBe('2026-06-06');
  });

  test('a month is tried week by week', async () => {
    const answer = await plan({ 'birds-wanted': 20, 'season-month': 'june' });
    expect(decided(answer)).toEqual([['first batch', 'list', 'season-plan/goes']]);
    expect(String(result(answer, 'hatch', 'first batch')).slice(0, 7)).toBe('2026-06');
  });
});

test('nothing of a plan is there afterwards', async () => {
  const flock = flockOf(...place);
  await ask(flock, 'season-plan', on);
  expect(flock.state({ on: addDays(on, 200), asOf: null, lines: null }).groups).toEqual([]);
});
