import fc from 'fast-check';
import { expect, test } from 'vitest';
import { firstWhere } from '../../../../engine/facts/sums/search.ts';

test('finds the first number for which it holds', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 200 }),
      fc.integer({ min: 0, max: 200 }),
      fc.integer({ min: 0, max: 250 }),
      (a, b, from) => {
        const [first, last] = [Math.min(a, b), Math.max(a, b)];
        const expected = from > last ? undefined : Math.max(first, from);
        expect(firstWhere(first, last, (n) => n >= from)).toBe(expected);
      },
    ),
  );
});

test('has nothing to find in an empty stretch', () => {
  expect(firstWhere(5, 4, () => true)).toBeUndefined();
});
