/** What a sample of a small flock tells about its mean, and how large it must be. */

/** Standard error of a sample's mean, as a share of the mean: spread/√n with the correction for a finite number. */
export const standardError = (spread: number, sampled: number, outOf: number): number => {
  if (outOf <= 1 || sampled >= outOf) return 0;
  return (spread / Math.sqrt(sampled)) * Math.sqrt((outOf - sampled) / (outOf - 1));
};

/**
 * The smallest sample whose mean lies within `within` of the true one, where `width` is how many standard errors that
 * must be. Never more than there are.
 */
export const sampleFor = (spread: number, within: number, width: number, outOf: number): number => {
  const endless = ((width * spread) / within) ** 2;
  const needed = endless / (1 + (endless - 1) / Math.max(1, outOf));
  return Math.max(0, Math.min(outOf, Math.ceil(needed - 1e-9)));
};

/** Some numbers put together: their mean, how many, and their standard deviation where it is known. */
export interface Sample {
  readonly mean: number;
  readonly count: number;
  readonly spread: number | null;
}

/** Several samples as one. The spread is known only where each is, or is of one. */
export const joinSamples = (samples: readonly Sample[]): Sample => {
  const count = samples.reduce((sum, each) => sum + each.count, 0);
  const mean = samples.reduce((sum, each) => sum + each.mean * each.count, 0) / count;
  const squares = samples.reduce<number | null>((sum, each) => {
    const own = each.count === 1 ? 0 : each.spread === null ? null : (each.count - 1) * each.spread ** 2;
    return sum === null || own === null ? null : sum + own + each.count * (each.mean - mean) ** 2;
  }, 0);
  return { mean, count, spread: squares === null || count < 2 ? null : Math.sqrt(squares / (count - 1)) };
};

/** A spread believed beforehand as if it had been seen in `trust` numbers, drawn toward the spreads of samples. */
export const poolSpread = (
  believed: number,
  trust: number,
  seen: readonly { readonly spread: number; readonly count: number }[],
): number => {
  const degrees = seen.reduce((sum, each) => sum + each.count - 1, trust);
  const squares = seen.reduce(
    (sum, each) => sum + (each.count - 1) * each.spread ** 2,
    trust * believed ** 2,
  );
  return degrees > 0 ? Math.sqrt(squares / degrees) : believed;
};
