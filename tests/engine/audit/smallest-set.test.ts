/** Halving finds a set that is enough and holds nothing needless, in few trials. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findSmallestSet } from '../../../engine/audit/smallest-set.ts';

/** Finds among 0 … n−1 what is enough when it holds all of one of the sets, and counts the trials. */
const find = async (n: number, sets: readonly (readonly number[])[]) => {
  let trials = 0;
  const isEnough = async (some: readonly number[]): Promise<boolean> => {
    trials += 1;
    return sets.some((set) => set.every((each) => some.includes(each)));
  };
  const found = await findSmallestSet([...Array(n).keys()], isEnough);
  return { found: found.toSorted((a, b) => a - b), trials };
};

test.each([
  [1, [[0]], [0]],
  [8, [[5]], [5]],
  [8, [[2, 6]], [2, 6]],
  // Of two that would do alone, the one given first.
  [8, [[3], [6]], [3]],
  [8, [[0, 1, 2, 3, 4, 5, 6, 7]], [0, 1, 2, 3, 4, 5, 6, 7]],
])('among %i things of which %j are enough: %j', async (n, sets, expected) => {
  expect((await find(n, sets)).found).toEqual(expected);
});

test('one of a thousand takes about a dozen trials', async () => {
  expect(await find(1000, [[777]])).toEqual({ found: [777], trials: 12 });
});

test('what is found is always one of the sets that are enough and hold no smaller one', async () => {
  const sets = fc.array(fc.uniqueArray(fc.nat({ max: 15 }), { minLength: 1, maxLength: 4 }), {
    minLength: 1,
    maxLength: 4,
  });
  await fc.assert(
    fc.asyncProperty(sets, async (each) => {
      const { found } = await find(16, each);
      const holds = (set: readonly number[]): boolean => set.every((one) => found.includes(one));
      expect(each.filter(holds).some((set) => set.length === found.length)).toBe(true);
      expect(each.filter((set) => holds(set) && set.length < found.length)).toEqual([]);
    }),
  );
});
