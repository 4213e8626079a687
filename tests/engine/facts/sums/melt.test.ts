import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meltFor } from '../../../../engine/facts/sums/melt.ts';

const melts = 80;

describe('meltFor', () => {
  test('cooling water by as many degrees as melting is worth melts its own mass', () => {
    expect(meltFor([{ mass: 3, heat: 1, from: 85, to: 5 }], melts)).toBeCloseTo(3, 12);
  });

  test('adds up its loads, and what is cold enough takes none', () => {
    const loads = [
      { mass: 2, heat: 0.8, from: 40, to: 5 },
      { mass: 1, heat: 1, from: 15, to: 5 },
      { mass: 9, heat: 1, from: 2, to: 5 },
    ];
    expect(meltFor(loads, melts)).toBeCloseTo((2 * 0.8 * 35 + 10) / melts, 12);
  });

  test('is never less for more to cool', () => {
    const mass = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(mass, mass, (some, more) => {
        const of = (each: number): number => meltFor([{ mass: each, heat: 0.8, from: 38, to: 4 }], melts);
        expect(of(some + more)).toBeGreaterThanOrEqual(of(some));
      }),
    );
  });
});
