import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../../engine/day.ts';
import type { State, Weighing } from '../../../../engine/types.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const hatched = '2026-05-01';
const plan = (age: number): number => Number(worth(stateOf({ on: addDays(hatched, age) }), 'table-weight'));
const weighing = (age: number, mean: number, count = 5): Weighing => ({
  on: addDays(hatched, age),
  line: 100 + age,
  mean,
  count,
  spread: null,
});
const onDay = (age: number, ...weighings: readonly Weighing[]): State =>
  stateOf({ on: addDays(hatched, age), groups: [group({ weighings })] });
const ratio = (state: State): number => Number(worth(state, 'flock-ratio'));

describe('a flock that was never weighed', () => {
  test('is taken to grow as planned, aloud, with a wide range', () => {
    const workings = workOut(onDay(35));
    expect(workings.step('flock-ratio', 'whites')).toMatchObject({
      value: 1,
      assumed: [{ id: 'grows-as-planned', group: 'whites', values: {} }],
    });
    expect(workings.step('flock-ratio-spread', 'whites').value).toBe(0.2);
    expect(workings.step('odd-weighing', 'whites').value).toBe(false);
    expect(workings.step('behind-since', 'whites').value).toBeNull();
  });
});

describe('a flock that grows otherwise than planned', () => {
  test('a third lighter is followed within two weighings of five birds', () => {
    const share = 2 / 3;
    const state = onDay(35, weighing(28, plan(28) * share), weighing(35, plan(35) * share));
    expect(ratio(state)).toBeCloseTo(share, 1);
    expect(Math.abs(ratio(state) / share - 1)).toBeLessThan(0.03);
  });

  test('growing through its life a third slower is followed too', () => {
    const slow = (age: number): number => plan((age * 2) / 3);
    for (const age of [21, 28, 42, 63]) {
      const state = onDay(age, weighing(age - 7, slow(age - 7)), weighing(age, slow(age)));
      expect(Math.abs((ratio(state) * plan(age)) / slow(age) - 1)).toBeLessThan(0.06);
    }
  });

  test('each weighing of more birds counts for more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 48 }),
        fc.double({ min: 0.6, max: 0.95, noNaN: true }),
        (count, share) => {
          const few = ratio(onDay(35, weighing(35, plan(35) * share, count)));
          const more = ratio(onDay(35, weighing(35, plan(35) * share, count + 1)));
          expect(more).toBeLessThanOrEqual(few);
          expect(more).toBeGreaterThanOrEqual(share);
        },
      ),
    );
  });

  test('one odd weighing does not throw it, and is said to be odd', () => {
    const good = [21, 28, 35].map((age) => weighing(age, plan(age) * 0.95));
    const state = onDay(42, ...good, weighing(42, plan(42) * 0.45));
    expect(Math.abs(ratio(state) / ratio(onDay(42, ...good)) - 1)).toBeLessThan(0.03);
    expect(worth(state, 'odd-weighing')).toBe(true);
    expect(
      worth(onDay(49, ...good, weighing(42, plan(42) * 0.45), weighing(49, plan(49) * 0.95)), 'odd-weighing'),
    ).toBe(false);
  });

  test('a pound taken for a kilogram does not throw it, even as the first weighing', () => {
    expect(Math.abs(ratio(onDay(35, weighing(35, plan(35) * 2.2046))) - 1)).toBeLessThan(0.06);
  });

  test('the whole flock on the scale leaves only what the scale leaves', () => {
    const state = onDay(35, weighing(35, plan(35) * 0.8, 50));
    expect(ratio(state)).toBeCloseTo(0.8, 2);
    expect(worth(state, 'flock-ratio-spread')).toBeCloseTo(0.02, 3);
  });

  test('what was weighed grows stale', () => {
    const spread = (age: number): number =>
      Number(worth(onDay(age, weighing(28, plan(28))), 'flock-ratio-spread'));
    expect(spread(56)).toBeGreaterThan(spread(28));
    expect(spread(56) ** 2 - spread(28) ** 2).toBeCloseTo(4 * 0.04 ** 2, 9);
  });
});

describe('since when they are behind', () => {
  test('is the first of the weighings in a row that leave them behind', () => {
    const shares = [
      [14, 0.97],
      [21, 0.7],
      [28, 0.98],
      [35, 0.72],
      [42, 0.7],
      [49, 0.7],
    ] as const;
    const weighings = shares.map(([age, share]) => weighing(age, plan(age) * share, 20));
    const since = worth(onDay(49, ...weighings), 'behind-since');
    expect(since).toBe(addDays(hatched, 42));
  });

  test('is not known while they are on track', () => {
    const recovered = [weighing(28, plan(28) * 0.7), weighing(35, plan(35)), weighing(42, plan(42))];
    expect(worth(onDay(42, ...recovered), 'behind-since')).toBeNull();
  });
});

describe('a kind that nobody described', () => {
  test('is followed by its weighings however far from the line it borrows', () => {
    const weighings = [weighing(28, 0.35), weighing(35, 0.5)];
    const state = stateOf({ on: addDays(hatched, 35), groups: [group({ kind: 'barred', weighings })] });
    expect(Number(worth(state, 'live-weight'))).toBeCloseTo(0.5, 1);
  });
});
