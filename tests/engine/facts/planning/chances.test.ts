import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { chanceOf, smallestOrder } from '../../../../engine/facts/planning/chances.ts';

const losses = fc.double({ min: 0.01, max: 0.4, noNaN: true });
const wants = fc.integer({ min: 1, max: 80 });

/** The beta-binomial by summing the binomial over the share, as a check that shares no formula with it. */
const summedOver = (order: number, wanted: number, loss: number, birds: number): number => {
  const slices = 4000;
  let sum = 0;
  for (let n = 0; n < slices; n += 1) {
    const share = (n + 0.5) / slices;
    const density = jStat.beta.pdf(share, loss * birds, (1 - loss) * birds);
    sum += (density * (1 - jStat.binomial.cdf(wanted - 1, order, 1 - share))) / slices;
  }
  return sum;
};

describe('the chance of enough birds', () => {
  test('with own flocks it is the binomial weighed by how likely each share is (jstat)', () => {
    const chance = chanceOf(57, 50, { loss: 0.08, restsOn: 95 });
    expect(chance).toBeCloseTo(summedOver(57, 50, 0.08, 95), 3);
  });

  test.each([
    [0, 1],
    [1, 0],
  ])('a loss of %i is certain either way', (loss, chance) => {
    expect(chanceOf(25, 25, { loss, restsOn: 100 })).toBe(chance);
  });
});

describe('the smallest order', () => {
  test('is sure enough, and one fewer is not', () => {
    fc.assert(
      fc.property(wants, losses, fc.constantFrom(null, 80), (wanted, loss, restsOn) => {
        const prospect = { loss, restsOn };
        const order = smallestOrder(wanted, 0.9, prospect) ?? Number.NaN;
        expect(chanceOf(order, wanted, prospect)).toBeGreaterThanOrEqual(0.9);
        if (order > wanted) expect(chanceOf(order - 1, wanted, prospect)).toBeLessThan(0.9);
      }),
    );
  });

  test('never shrinks with more birds wanted, more certainty or more loss', () => {
    fc.assert(
      fc.property(wants, losses, (wanted, loss) => {
        const order = (birds: number, share: number, certainty: number): number =>
          smallestOrder(birds, certainty, { loss: share, restsOn: null }) ?? Number.POSITIVE_INFINITY;
        const base = order(wanted, loss, 0.9);
        expect(order(wanted + 1, loss, 0.9)).toBeGreaterThanOrEqual(base);
        expect(order(wanted, loss + 0.05, 0.9)).toBeGreaterThanOrEqual(base);
        expect(order(wanted, loss, 0.95)).toBeGreaterThanOrEqual(base);
      }),
    );
  });

  test('there is none where all are lost', () => {
    expect(smallestOrder(10, 0.9, { loss: 1, restsOn: null })).toBeUndefined();
  });
});
