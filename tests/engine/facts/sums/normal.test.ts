import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { halfWidth, normalChance, normalQuantile } from '../../../../engine/facts/sums/normal.ts';

describe('normalQuantile', () => {
  test.each([1e-9, 0.0001, 0.01, 0.025, 0.05, 0.074, 0.076, 0.3, 0.5, 0.7, 0.924, 0.926, 0.975, 0.999])(
    'at %f it is that of the reference library',
    (p) => expect(normalQuantile(p)).toBeCloseTo(jStat.normal.inv(p, 0, 1), 5),
  );

  test('is undone by the reference distribution', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (p) => {
        expect(jStat.normal.cdf(normalQuantile(p), 0, 1)).toBeCloseTo(p, 6);
      }),
    );
  });
});

describe('halfWidth', () => {
  test.each([
    [0.9, 1.645],
    [0.95, 1.96],
    [0.99, 2.576],
  ])('holds %f of a normal', (certainty, width) => expect(halfWidth(certainty)).toBeCloseTo(width, 3));
});

describe('normalChance', () => {
  test('is that of the reference library', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), (x) => {
        expect(normalChance(x)).toBeCloseTo(jStat.normal.cdf(x, 0, 1), 6);
      }),
    );
  });

  test('is even at the middle', () => expect(normalChance(0)).toBeCloseTo(0.5, 7));
});
