import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { joinSamples, poolSpread, sampleFor, standardError } from '../../../../engine/facts/sums/sampling.ts';

describe('standardError', () => {
  test('is nothing when all were sampled', () => {
    expect(standardError(0.1, 50, 50)).toBe(0);
    expect(standardError(0.1, 1, 1)).toBe(0);
  });

  test('never grows with a larger sample', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99 }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (n, spread) => {
          expect(standardError(spread, n + 1, 100)).toBeLessThanOrEqual(standardError(spread, n, 100));
        },
      ),
    );
  });
});

describe('sampleFor', () => {
  test('is the smallest sample whose error is small enough', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 300 }),
        fc.double({ min: 0.02, max: 0.4, noNaN: true }),
        (outOf, spread) => {
          const n = sampleFor(spread, 0.05, 1.96, outOf);
          expect(1.96 * standardError(spread, n, outOf)).toBeLessThanOrEqual(0.05 + 1e-9);
          if (n > 1) expect(1.96 * standardError(spread, n - 1, outOf)).toBeGreaterThan(0.05 - 1e-9);
        },
      ),
    );
  });

  test('of none is none', () => {
    expect(sampleFor(0.1, 0.05, 1.96, 0)).toBe(0);
  });
});

describe('joinSamples', () => {
  test('of single numbers is their mean and standard deviation', () => {
    const joined = joinSamples([2, 4, 4, 6].map((mean) => ({ mean, count: 1, spread: null })));
    expect(joined).toEqual({ mean: 4, count: 4, spread: Math.sqrt(8 / 3) });
  });

  test('of two samples is that of all their numbers', () => {
    const first = joinSamples([2, 4].map((mean) => ({ mean, count: 1, spread: null })));
    const second = joinSamples([4, 6].map((mean) => ({ mean, count: 1, spread: null })));
    const { mean, count, spread } = joinSamples([first, second]);
    expect([mean, count]).toEqual([4, 4]);
    expect(spread).toBeCloseTo(Math.sqrt(8 / 3), 12);
  });

  test('has no spread when one of them has none', () => {
    const samples = [
      { mean: 2, count: 3, spread: null },
      { mean: 3, count: 3, spread: 0.2 },
    ];
    expect(joinSamples(samples)).toEqual({ mean: 2.5, count: 6, spread: null });
  });
});

describe('poolSpread', () => {
  test('is what was believed when nothing was seen', () => {
    expect(poolSpread(0.12, 10, [])).toBeCloseTo(0.12, 12);
  });

  test('lies between what was believed and what was seen, half way in squares when they weigh alike', () => {
    expect(poolSpread(0.1, 10, [{ spread: 0.2, count: 11 }]) ** 2).toBeCloseTo((0.1 ** 2 + 0.2 ** 2) / 2, 12);
  });

  test('without trust and without a sample is what was believed', () => {
    expect(poolSpread(0.1, 0, [])).toBe(0.1);
  });
});
