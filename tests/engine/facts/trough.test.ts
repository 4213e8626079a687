/** Feeders and drinkers by age and number, and against what there is. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { State } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const inch = 0.0254;
const inches = (length: unknown): number => Math.round((Number(length) / inch) * 1e6) / 1e6;

const place = (birds: number, age: number, values: Readonly<Record<string, number>> = {}): State =>
  stateOf({
    on: addDays('2026-05-01', age),
    groups: [group({ boxed: birds })],
    settings: Object.fromEntries(
      Object.entries(values).map(([what, value]) => [
        what,
        [{ what, value, on: '2026-05-01', line: 20, size: null, said: '' }],
      ]),
    ),
  });

test.each([
  [3, 60, 30],
  [10, 90, 30],
  [25, 120, 30],
  [40, 120, 45],
  [60, 180, 60],
])('sixty birds on day %i want %i in of feeder and %i in of drinker', (age, feeder, drinker) => {
  const state = place(60, age);
  expect([inches(worth(state, 'feeder-edge')), inches(worth(state, 'drinker-edge'))]).toEqual([
    feeder,
    drinker,
  ]);
});

test.each([
  [1, 2],
  [60, 2],
  [100, 2],
  [101, 3],
])('%i birds want %i drinkers', (birds, drinkers) => {
  expect(worth(place(birds, 10), 'drinkers-wanted')).toBe(drinkers);
});

test('both sides of each trough count, and feeders that are lacking are counted whole', () => {
  const state = place(60, 25, { 'feeder-length': 36 * inch, feeders: 1 });
  expect(inches(worth(state, 'feeder-edge-there'))).toBe(72);
  expect(inches(worth(state, 'feeder-edge-each'))).toBe(1.2);
  expect(worth(state, 'feeders-short')).toBe(1);
  expect(worth(place(60, 25, { 'feeder-length': 36 * inch, feeders: 2 }), 'feeders-short')).toBe(0);
});

test('one feeder is taken where no number is set, aloud; its length is asked for', () => {
  const { value, assumed } = workOut(place(60, 25)).step('feeders', null);
  expect({ value, assumed: assumed.map(({ id }) => id) }).toEqual({ value: 1, assumed: ['one-feeder'] });
  expect(workOut(place(60, 25)).step('feeders-short', 'whites').missing).toEqual([
    { fact: 'feeder-length', group: null },
  ]);
});

test('several groups share the feeders by their birds, and each wants drinkers of its own', () => {
  const state = place(60, 25, { 'feeder-length': 90 * inch });
  const both = { ...state, groups: [...state.groups, group({ name: 'reds', line: 2, boxed: 30 })] };
  expect(inches(worth(both, 'feeder-edge-there', both.on, 'reds'))).toBe(60);
  expect(worth(both, 'drinkers-wanted-in-all', both.on, null)).toBe(4);
});

test('more birds never want less, and splitting a group changes no total of edge', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 60 }), fc.nat(100), fc.nat(100), (age, some, more) => {
      const edge = (birds: number): number => Number(worth(place(birds, age), 'feeder-edge'));
      expect(edge(some + more)).toBeCloseTo(edge(some) + edge(more), 9);
    }),
    { numRuns: 50 },
  );
});
