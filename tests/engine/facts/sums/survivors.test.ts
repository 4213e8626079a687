/** How many birds of several lots are left, against the binomial of the reference library and against each other. */
import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { chanceOfAtLeast, chancesLeft, surelyLeft } from '../../../../engine/facts/sums/survivors.ts';

describe('one lot', () => {
  test('has the chances of a binomial count', () => {
    const chances = chancesLeft([{ count: 30, loss: 0.08 }]);
    expect(chances).toHaveLength(31);
    chances.forEach((chance, left) => {
      expect(chance).toBeCloseTo(jStat.binomial.pdf(left, 30, 0.92), 12);
    });
  });

  test('leaves at least 50 of 55 with a chance of 0.944 at 5 % loss, pure arithmetic worked out independently', () => {
    expect(chanceOfAtLeast([{ count: 55, loss: 0.05 }], 50)).toBeCloseTo(0.944, 3);
    expect(surelyLeft([{ count: 55, loss: 0.05 }], 0.9)).toBe(50);
    expect(surelyLeft([{ count: 54, loss: 0.05 }], 0.9)).toBe(49);
  });

  test.each([
    [[{ count: 12, loss: 0 }], 12],
    [[{ count: 12, loss: 1 }], 0],
    [[], 0],
  ])('%j surely leaves %i', (lots, left) => {
    expect(surelyLeft(lots, 0.9)).toBe(left);
  });

  test('always leaves at least none', () => {
    expect(chanceOfAtLeast([], 0)).toBe(1);
    expect(chanceOfAtLeast([], 1)).toBe(0);
  });
});

describe('several lots', () => {
  test('with the same loss are as one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 25 }),
        fc.integer({ min: 0, max: 25 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (one, two, loss) => {
          const parted = chancesLeft([
            { count: one, loss },
            { count: two, loss },
          ]);
          const whole = chancesLeft([{ count: one + two, loss }]);
          whole.forEach((chance, left) => {
            expect(parted[left]).toBeCloseTo(chance, 9);
          });
        },
      ),
      { numRuns: 30 },
    );
  });

  test('leave no fewer for more birds, and no more for more certainty', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 40 }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 0.5, max: 0.98, noNaN: true }),
        (count, loss, certainty) => {
          const left = surelyLeft([{ count, loss }], certainty);
          expect(surelyLeft([{ count: count + 1, loss }], certainty)).toBeGreaterThanOrEqual(left);
          expect(surelyLeft([{ count, loss }], certainty + 0.01)).toBeLessThanOrEqual(left);
        },
      ),
      { numRuns: 50 },
    );
  });
});
