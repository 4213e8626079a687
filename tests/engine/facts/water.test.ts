import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Group, Setting, State, WeatherDay } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const hatched = '2026-05-01';
const flock = (age: number, given: Partial<State> = {}, of: Partial<Group> = {}): State =>
  stateOf({ on: addDays(hatched, age), groups: [group({ arrived: hatched, ...of })], ...given });
const high = (age: number, value: number): Record<string, WeatherDay> => {
  const on = addDays(hatched, age);
  return { [on]: { on, low: null, high: { on, line: 2, value }, rain: null, wind: null, humidity: null } };
};
const set = (what: string, value: number): Record<string, readonly Setting[]> => ({
  [what]: [{ on: hatched, line: 3, what, value, size: null, said: String(value) }],
});

describe('water for the day', () => {
  test('goes by the table of ages between its weeks', () => {
    expect(worth(flock(31.5), 'water-per-bird')).toBeCloseTo((0.245 + 0.29) / 2, 2);
    expect(worth(flock(3), 'water-per-bird')).toBe(0.065);
    expect(worth(flock(90), 'water-per-bird')).toBe(0.37);
  });

  test('takes a mild day where no high is on record, and says so', () => {
    const step = workOut(flock(42)).step('water-heat-factor', null);
    expect(step.value).toBe(1);
    expect(step.assumed).toEqual([
      { id: 'mild-day', group: null, values: { mild: { value: 21, unit: 'C' } } },
    ]);
  });

  test('is not lowered on a cool day', () => {
    expect(worth(flock(42, { weather: high(42, 5) }), 'water-heat-factor', addDays(hatched, 42), null)).toBe(
      1,
    );
  });

  test('is lower for a slow bird as its feed is', () => {
    const [fast, slow] = ['fast', 'slow'].map((kind) => {
      const state = flock(42, {}, { kind });
      return { water: Number(worth(state, 'water-per-bird')), feed: Number(worth(state, 'feed-table-day')) };
    });
    expect((slow?.water ?? 0) / (fast?.water ?? 1)).toBeCloseTo((slow?.feed ?? 0) / (fast?.feed ?? 1), 10);
  });

  test('goes by their feed when they eat more than the table has', () => {
    const state = flock(42);
    const more = [{ what: { fact: 'feed-today' }, value: 12, adds: false }];
    const step = workOut(state, state.on, more).step('water-per-day', 'whites');
    expect(step.value).toBeCloseTo(12 * 1.77, 10);
    expect(worth(state, 'water-per-day')).toBe(worth(state, 'water-from-table'));
  });

  test('on grass, with what is spilled, is 2.33 times the feed', () => {
    const state = flock(42);
    expect(worth(state, 'water-with-spills')).toBeCloseTo(2.33 * Number(worth(state, 'feed-today')), 10);
  });

  test('never falls with more birds or more heat', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('fast', 'medium', 'slow'),
        fc.integer({ min: 0, max: 120 }),
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: -10, max: 45 }),
        (kind, age, boxed, warmth) => {
          const water = (birds: number, top: number): number =>
            Number(worth(flock(age, { weather: high(age, top) }, { kind, boxed: birds }), 'water-per-day'));
          expect(water(boxed + 1, warmth)).toBeGreaterThan(water(boxed, warmth));
          expect(water(boxed, warmth + 1)).toBeGreaterThanOrEqual(water(boxed, warmth));
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('fills', () => {
  const drinkers = (count: number, size: number) => ({
    settings: { ...set('drinkers', count), ...set('drinker-size', size) },
  });

  test('are the water over what the drinkers hold, a begun one whole', () => {
    expect(worth(flock(42, drinkers(2, 10)), 'drinker-fills')).toBe(1);
    expect(worth(flock(42, drinkers(2, 8)), 'drinker-fills')).toBe(2);
  });

  test('are at least two on a hot day', () => {
    expect(worth(flock(42, { ...drinkers(2, 100), weather: high(42, 27) }), 'drinker-fills')).toBe(2);
    expect(worth(flock(42, { ...drinkers(2, 100), weather: high(42, 26) }), 'drinker-fills')).toBe(1);
  });

  test('are not known without the drinkers, and say what would settle them', () => {
    expect(workOut(flock(42)).step('drinker-fills', 'whites').missing).toEqual([
      { fact: 'drinkers', group: null },
      { fact: 'drinker-size', group: null },
    ]);
    expect(worth(flock(42, drinkers(0, 8)), 'drinker-fills')).toBeNull();
  });

  test('share the drinkers among groups by their birds', () => {
    const twin = group({ arrived: hatched, name: 'twins', line: 2 });
    const groups = [group({ arrived: hatched }), twin];
    expect(worth(flock(42, { groups, ...drinkers(4, 8) }), 'drinker-fills')).toBe(2);
  });
});
