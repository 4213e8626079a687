/** Quantiles of the normal distribution, and the chances below a point. */

/** c0 + c1·x + c2·x² + … */
const polynomial = (x: number, coefficients: readonly number[]): number =>
  coefficients.reduceRight((sum, each) => sum * x + each, 0);

/**
 * The point below which a standard normal lies with this probability; good to seven digits for 0 < p < 1.
 * Wichura 1988, Applied Statistics 37, algorithm AS 241 (PPND7).
 */
export const normalQuantile = (p: number): number => {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (
      (q * polynomial(r, [3.3871327179, 50.434271938, 159.29113202, 59.10937472])) /
      polynomial(r, [1, 17.895169469, 78.757757664, 67.1875636])
    );
  }
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const size =
    r <= 5
      ? polynomial(r - 1.6, [1.4234372777, 2.75681539, 1.3067284816, 0.17023821103]) /
        polynomial(r - 1.6, [1, 0.7370016425, 0.12021132975])
      : polynomial(r - 5, [6.657905115, 3.081226386, 0.42868294337, 0.017337203997]) /
        polynomial(r - 5, [1, 0.24197894225, 0.012258202635]);
  return q < 0 ? -size : size;
};

/** How many standard deviations on either side hold this share of a normal: 0.95 → 1.96. */
export const halfWidth = (certainty: number): number => normalQuantile((1 + certainty) / 2);

/**
 * The probability with which a standard normal lies below a point; good to seven decimals.
 * Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 26.2.17.
 */
export const normalChance = (x: number): number => {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const above =
    (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)) *
    polynomial(t, [0, 0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429]);
  return x > 0 ? 1 - above : above;
};
