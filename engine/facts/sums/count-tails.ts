/** The chance of a count or more: binomial with a known share, beta-binomial when the share itself is only estimated. */

/** Sums the chances from `count` to `trials`, given the log chance of 0 and how each follows from the one before. */
const sumTail = (
  trials: number,
  count: number,
  logOfNone: number,
  ratio: (before: number) => number,
): number => {
  let log = logOfNone;
  let sum = 0;
  for (let k = 0; k <= trials; k += 1) {
    if (k > 0) log += Math.log(ratio(k - 1));
    if (k >= count) sum += Math.exp(log);
  }
  return Math.min(1, sum);
};

/**
 * P(X ≥ count) of a binomial count.
 * @param trials whole number, 0 or more
 * @param share chance of each trial, 0 to 1
 */
export const binomialTail = (trials: number, share: number, count: number): number => {
  if (count <= 0) return 1;
  if (count > trials || share <= 0) return 0;
  if (share >= 1) return 1;
  const odds = share / (1 - share);
  return sumTail(trials, count, trials * Math.log1p(-share), (k) => ((trials - k) / (k + 1)) * odds);
};

/**
 * P(X ≥ count) of a beta-binomial count: a binomial one whose share is drawn from Beta(a, b).
 * @param a above 0; a / (a + b) is the mean share
 * @param b above 0
 */
export const betaBinomialTail = (trials: number, a: number, b: number, count: number): number => {
  if (count <= 0) return 1;
  if (count > trials) return 0;
  let logOfNone = 0;
  for (let i = 0; i < trials; i += 1) logOfNone += Math.log((b + i) / (a + b + i));
  return sumTail(
    trials,
    count,
    logOfNone,
    (k) => ((trials - k) / (k + 1)) * ((a + k) / (b + trials - k - 1)),
  );
};
