import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import { betaBinomialTail, binomialTail } from '../../../engine/facts/sums/count-tails.ts';
import type { Group } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { worth } from '../../helpers/work-out.ts';

/** The flock on a day of its age, chicks counted from the hatch so that nothing is behind them. */
const atAge = (age: number, given: Partial<Group> = {}, others: readonly Group[] = []) =>
  stateOf({
    on: addDays('2026-05-01', age),
    groups: [group({ arrived: '2026-05-01', ...given }), ...others],
  });

/** A finished batch of 48: 5 lost, the rest processed at eight weeks (on the day that makes 56 whole days). */
const finished = group({
  name: 'last year',
  line: 40,
  hatched: '2025-05-01',
  arrived: '2025-05-01',
  boxed: 48,
  losses: [{ on: '2025-05-20', line: 41, count: 5, cause: 'unknown' }],
  processed: [{ on: '2025-06-25', line: 42, count: 43, dressed: null }],
});

describe('what is usual', () => {
  test.each([
    // 2 % by the end of the first week, 3 % by four weeks, 8 % by eight.
    [6, 0.02],
    [27, 0.03],
    [55, 0.08],
    [69, 0.1],
    [153, 0.5],
  ])('through day %i, %d of the chicks are lost', (age, share) => {
    expect(worth(atAge(age), 'expected-share')).toBeCloseTo(share, 12);
    expect(worth(atAge(age), 'expected-losses')).toBeCloseTo(50 * share, 10);
  });

  test('slower birds are not taken to fail as fast ones do when kept long', () => {
    expect(worth(atAge(153, { kind: 'slow' }), 'expected-share')).toBeCloseTo(0.16, 12);
    expect(worth(atAge(153, { kind: 'of their own' }), 'expected-share')).toBeCloseTo(0.16, 12);
  });

  test('what was behind them on arrival is not expected again', () => {
    // Day 3 to the end of day 6: four sevenths of the first week.
    const state = stateOf({ on: '2026-05-07', groups: [group({ arrived: '2026-05-04' })] });
    expect(worth(state, 'expected-share')).toBeCloseTo((0.02 * 4) / 7, 12);
  });

  test('processed birds count only up to their day', () => {
    const processed = [{ on: addDays('2026-05-01', 27), line: 7, count: 25, dressed: null }];
    expect(worth(atAge(55, { processed }), 'expected-share')).toBeCloseTo((0.03 + 0.08) / 2, 12);
  });

  test('the days of eight weeks make up the whole', () => {
    let alive = 1;
    for (let age = 0; age < 56; age += 1) alive *= 1 - Number(worth(atAge(age), 'loss-per-day'));
    expect(1 - alive).toBeCloseTo(0.08, 12);
  });

  test('before the hatch nothing is lost', () => {
    expect(worth(atAge(-3), 'loss-per-day')).toBe(0);
  });
});

describe('own past flocks', () => {
  test('pull the table toward them by the birds they rest on', () => {
    // 55 birds' worth of the table with 4.4 lost, 48 birds of their own with 5.
    expect(worth(atAge(10, {}, [finished]), 'loss-rate')).toBeCloseTo((4.4 + 5) / (55 + 48), 12);
    expect(worth(atAge(10), 'loss-rate')).toBeCloseTo(0.08, 12);
  });

  test('that still have birds do not count yet', () => {
    const going = { ...finished, processed: [{ on: '2025-06-25', line: 42, count: 42, dressed: null }] };
    expect(worth(atAge(10, {}, [going]), 'loss-rate')).toBeCloseTo(0.08, 12);
  });

  test('of which one was lost whole do not make that usual', () => {
    const taken = {
      ...finished,
      losses: [{ on: '2025-05-20', line: 41, count: 48, cause: 'fox' }],
      processed: [],
    };
    expect(worth(atAge(10, {}, [taken]), 'loss-rate')).toBe(0.15);
  });

  test('always leave the rate between the table and their own', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.nat(200), (boxed, dead) => {
        const lost = Math.min(boxed, dead);
        const past = {
          ...finished,
          boxed,
          losses: [{ on: '2025-05-20', line: 41, count: lost, cause: 'unknown' }],
          processed: [{ on: '2025-06-25', line: 42, count: boxed - lost, dressed: null }],
        };
        const rate = Number(worth(atAge(10, {}, [past]), 'loss-rate'));
        const own = lost / boxed;
        expect(rate).toBeGreaterThanOrEqual(Math.min(0.08, own) - 1e-12);
        expect(rate).toBeLessThanOrEqual(Math.max(0.08, own) + 1e-12);
      }),
      { numRuns: 30 },
    );
  });
});

describe('the chance of so many', () => {
  const lost = (count: number) => ({ losses: [{ on: '2026-05-05', line: 8, count, cause: 'unknown' }] });

  test('is a binomial tail by the table', () => {
    expect(worth(atAge(27, lost(4)), 'loss-chance')).toBeCloseTo(binomialTail(50, 0.03, 4), 12);
  });

  test('is a beta-binomial tail with own past flocks', () => {
    const rate = 9.4 / 103;
    const share = rate * 0.375;
    const chance = betaBinomialTail(50, share * 103, (1 - share) * 103, 4);
    expect(worth(atAge(27, lost(4), [finished]), 'loss-chance')).toBeCloseTo(chance, 12);
  });

  test('is certain when none is lost', () => {
    expect(worth(atAge(0), 'loss-chance')).toBe(1);
  });

  test('never rises with the losses', () => {
    const chances = Array.from({ length: 20 }, (_, count) =>
      Number(worth(atAge(27, lost(count)), 'loss-chance')),
    );
    expect(chances).toEqual([...chances].sort((a, b) => b - a));
  });
});
