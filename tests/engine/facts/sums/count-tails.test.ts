import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { betaBinomialTail, binomialTail } from '../../../../engine/facts/sums/count-tails.ts';

/** Sums the reference library's own chances from `count` on. */
const sumFrom = (count: number, trials: number, chanceOf: (k: number) => number): number => {
  let sum = 0;
  for (let k = count; k <= trials; k += 1) sum += chanceOf(k);
  return sum;
};

const trials = fc.integer({ min: 1, max: 300 });
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
const weight = fc.double({ min: 0.1, max: 400, noNaN: true });

describe('binomial', () => {
  test('agrees with jstat', () => {
    fc.assert(
      fc.property(trials, share, fc.nat(300), (n, p, k) => {
        const reference = sumFrom(Math.min(k, n + 1), n, (each) => jStat.binomial.pdf(each, n, p));
        expect(binomialTail(n, p, k)).toBeCloseTo(k === 0 ? 1 : reference, 8);
      }),
    );
  });

  test('can be added up by hand', () => {
    // Two of three with a chance of one in four: 3 × 1/16 × 3/4 + 1/64 = 10/64.
    expect(binomialTail(3, 0.25, 2)).toBeCloseTo(10 / 64, 14);
  });

  test('knows the certain and the impossible', () => {
    expect([
      binomialTail(5, 0, 0),
      binomialTail(5, 0, 1),
      binomialTail(5, 1, 5),
      binomialTail(5, 0.5, 6),
      binomialTail(0, 0.5, 1),
    ]).toEqual([1, 0, 1, 0, 0]);
  });

  test('stays exact for a large flock', () => {
    // The mean of a symmetric count: half of the rest on either side of the middle.
    const middle = Math.exp(jStat.combinationln(20000, 10000) - 20000 * Math.log(2));
    expect(binomialTail(20000, 0.5, 10000)).toBeCloseTo(0.5 + middle / 2, 8);
  });

  test('never rises with the count and never falls with the share', () => {
    fc.assert(
      fc.property(trials, share, fc.integer({ min: 0, max: 299 }), (n, p, k) => {
        expect(binomialTail(n, p, k + 1)).toBeLessThanOrEqual(binomialTail(n, p, k) + 1e-12);
        expect(binomialTail(n, Math.min(1, p + 0.01), k)).toBeGreaterThanOrEqual(
          binomialTail(n, p, k) - 1e-12,
        );
      }),
    );
  });
});

describe('beta-binomial', () => {
  test('agrees with sums of jstat logarithms', () => {
    fc.assert(
      fc.property(trials, weight, weight, fc.nat(300), (n, a, b, k) => {
        const reference = sumFrom(Math.min(k, n + 1), n, (each) =>
          Math.exp(jStat.combinationln(n, each) + jStat.betaln(a + each, b + n - each) - jStat.betaln(a, b)),
        );
        expect(betaBinomialTail(n, a, b, k)).toBeCloseTo(k === 0 ? 1 : reference, 8);
      }),
    );
  });

  test('with Beta(1, 1) every count is as likely as any other', () => {
    expect(betaBinomialTail(9, 1, 1, 4)).toBeCloseTo(6 / 10, 14);
  });

  test('comes to the binomial when the share is sure', () => {
    expect(betaBinomialTail(50, 0.08 * 1e9, 0.92 * 1e9, 7)).toBeCloseTo(binomialTail(50, 0.08, 7), 6);
  });
});
