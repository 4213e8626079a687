/** How many of several lots are left when each bird of a lot is lost with the lot's own chance. */

/** A lot: whole birds, and the share of each that is expected to be lost, 0 to 1. */
export interface Lot {
  readonly count: number;
  readonly loss: number;
}

/** Chances of 0, 1, 2 … left of one lot, as a binomial count. */
const leftOf = ({ count, loss }: Lot): readonly number[] => {
  let chances = [1];
  for (let bird = 0; bird < count; bird += 1) {
    chances = Array.from(
      { length: chances.length + 1 },
      (_, left) => (chances[left] ?? 0) * loss + (chances[left - 1] ?? 0) * (1 - loss),
    );
  }
  return chances;
};

/** Chances of a sum of two counts that know nothing of one another. */
const both = (some: readonly number[], others: readonly number[]): readonly number[] => {
  const sum = Array.from({ length: some.length + others.length - 1 }, () => 0);
  some.forEach((chance, one) => {
    others.forEach((other, two) => {
      sum[one + two] = (sum[one + two] ?? 0) + chance * other;
    });
  });
  return sum;
};

/** Chances of 0, 1, 2 … birds left of all lots together. */
export const chancesLeft = (lots: readonly Lot[]): readonly number[] => lots.map(leftOf).reduce(both, [1]);

/** P(at least so many left). */
export const chanceOfAtLeast = (lots: readonly Lot[], count: number): number =>
  count <= 0
    ? 1
    : Math.min(
        1,
        chancesLeft(lots).reduce((sum, chance, left) => (left >= count ? sum + chance : sum), 0),
      );

/** The most birds that are left with at least this certainty, 0 to 1. */
export const surelyLeft = (lots: readonly Lot[], certainty: number): number => {
  const chances = chancesLeft(lots);
  let sum = 0;
  for (let left = chances.length - 1; left > 0; left -= 1) {
    sum += chances[left] ?? 0;
    // A hair below from rounding is not a bird fewer.
    if (sum >= certainty - 1e-12) return left;
  }
  return 0;
};
