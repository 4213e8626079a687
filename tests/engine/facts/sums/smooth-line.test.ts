import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Point, smoothLine } from '../../../../engine/facts/sums/smooth-line.ts';

const rising = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 500 })), {
    minLength: 2,
    maxLength: 10,
  })
  .map((steps) => {
    let [x, y] = [0, 0];
    return steps.map(([dx, dy]): Point => {
      x += dx;
      y += dy;
      return [x, y];
    });
  });

describe('smoothLine', () => {
  test('goes through every point', () => {
    fc.assert(
      fc.property(rising, (points) => {
        const line = smoothLine(points);
        for (const [x, y] of points) expect(line(x)).toBeCloseTo(y, 9);
      }),
    );
  });

  test('never falls where the points rise', () => {
    fc.assert(
      fc.property(
        rising,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (points, a, b) => {
          const line = smoothLine(points);
          const start = points[0]?.[0] ?? 0;
          const end = points.at(-1)?.[0] ?? 0;
          const [early, late] = [Math.min(a, b), Math.max(a, b)].map(
            (share) => start + share * (end - start),
          );
          expect(line(late ?? 0)).toBeGreaterThanOrEqual(line(early ?? 0) - 1e-9);
        },
      ),
    );
  });

  test('keeps a straight line straight', () => {
    const line = smoothLine([
      [0, 1],
      [2, 5],
      [7, 15],
    ]);
    expect(line(1)).toBeCloseTo(3, 12);
    expect(line(4.5)).toBeCloseTo(10, 12);
  });

  // Worked by hand from the formula: rises 1 and 3, equal steps, so slopes 0 (held back), 1.5 and 4.
  test('bends between unequal rises as the formula says', () => {
    const line = smoothLine([
      [0, 0],
      [1, 1],
      [2, 4],
    ]);
    expect(line(0.5)).toBeCloseTo(0.3125, 12);
    expect(line(1.5)).toBeCloseTo(2.1875, 12);
  });

  test('is level beyond its ends', () => {
    const line = smoothLine([
      [1, 10],
      [2, 20],
    ]);
    expect([line(-3), line(9)]).toEqual([10, 20]);
  });

  test('refuses points out of order', () => {
    expect(() => smoothLine([[1, 1]])).toThrow('rising order');
    expect(() =>
      smoothLine([
        [2, 1],
        [1, 3],
      ]),
    ).toThrow('rising order');
  });
});
