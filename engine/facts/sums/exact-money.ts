/** Money in exact decimals: sums, products and shares come out to the hundredth, and shares add up to what was shared. */
import { Big } from 'big.js';

/** Money as exact decimal text, or as a number that is already whole hundredths. */
export type Money = string | number;

const hundredths = 2;
const perUnit = 100;

const toHundredths = (amount: Big): number => amount.round(hundredths, Big.roundHalfUp).toNumber();

/** The exact sum of amounts. */
export const sumMoney = (amounts: readonly Money[]): number =>
  toHundredths(amounts.reduce<Big>((sum, each) => sum.plus(each), new Big(0)));

/** One amount less another. */
export const lessMoney = (from: Money, less: Money): number => toHundredths(new Big(from).minus(less));

/** An amount so many times, to the hundredth, half a hundredth rounded up. */
export const timesMoney = (amount: Money, times: number): number =>
  toHundredths(new Big(amount).times(times));

/** An amount divided, to the hundredth. @param by above 0 */
export const partMoney = (amount: Money, by: number): number => toHundredths(new Big(amount).div(by));

/**
 * Parts of an amount by weights, in whole hundredths that add up to it exactly: what rounding down leaves over goes to
 * the parts that lost most by it, the first of equal ones before the rest. All parts are 0 where no weight is above 0.
 * @param weights 0 or more each
 */
export const shareMoney = (amount: Money, weights: readonly number[]): readonly number[] => {
  const all = weights.reduce((sum, each) => sum.plus(each), new Big(0));
  if (all.lte(0)) return weights.map(() => 0);
  const cents = new Big(amount).times(perUnit).round(0, Big.roundHalfUp);
  const exact = weights.map((weight) => cents.times(weight).div(all));
  const whole = exact.map((each) => each.round(0, Big.roundDown));
  const left = cents.minus(whole.reduce((sum, each) => sum.plus(each), new Big(0))).toNumber();
  const cut = exact
    .map((each, index) => ({ index, lost: each.minus(whole[index] ?? 0) }))
    .sort((a, b) => b.lost.cmp(a.lost) || a.index - b.index)
    .slice(0, left)
    .map(({ index }) => index);
  return whole.map((each, index) =>
    each
      .plus(cut.includes(index) ? 1 : 0)
      .div(perUnit)
      .toNumber(),
  );
};
