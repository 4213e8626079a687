/** Following a level that wanders slowly, seen through uncertain readings of which one may be plain wrong. */

/** One reading of the level at a time. */
export interface Reading {
  readonly at: number;
  readonly value: number;
  readonly variance: number;
}

/** What is believed of the level. `odd` says that the latest reading was held back as too far off. */
export interface Belief {
  readonly at: number;
  readonly level: number;
  readonly variance: number;
  readonly odd: boolean;
}

export interface Wandering {
  /** What is believed before any reading. */
  readonly level: number;
  readonly variance: number;
  /** Variance that the level gains in one unit of time between readings. */
  readonly drift: number;
  /** Readings further off than this many standard deviations are held back until a second one confirms them. */
  readonly gate: number;
}

type Level = Pick<Belief, 'level' | 'variance'>;

/** One step of the Kalman filter for a level that walks at random (Kalman 1960). */
const update = ({ level, variance }: Level, reading: Pick<Reading, 'value' | 'variance'>): Level => {
  const total = variance + reading.variance;
  if (total === 0) return { level, variance };
  const gain = variance / total;
  return { level: level + gain * (reading.value - level), variance: (1 - gain) * variance };
};

/**
 * The belief after each reading, in the order given (times must not fall). A reading too far off counts as if it were as
 * uncertain as it is far off; when the next one agrees with it, the level is taken to have been elsewhere all along:
 * the belief opens again, at least as wide as it was at first and as the readings are off, and takes both.
 */
export const followLevel = (readings: readonly Reading[], wandering: Wandering): readonly Belief[] => {
  const beliefs: Belief[] = [];
  let heldBack: Reading | undefined;
  for (const reading of readings) {
    const last = beliefs.at(-1);
    const before: Level =
      last === undefined
        ? wandering
        : { level: last.level, variance: last.variance + wandering.drift * (reading.at - last.at) };
    const off = reading.value - before.level;
    const odd = Math.abs(off) > wandering.gate * Math.sqrt(before.variance + reading.variance);
    const agrees = (other: Reading): boolean =>
      Math.abs(reading.value - other.value) <=
      wandering.gate *
        Math.sqrt(reading.variance + other.variance + wandering.drift * (reading.at - other.at));
    if (!odd) {
      beliefs.push({ ...update(before, reading), at: reading.at, odd });
      heldBack = undefined;
    } else if (heldBack !== undefined && agrees(heldBack)) {
      const open: Level = {
        level: before.level,
        variance: Math.max(before.variance, wandering.variance, off ** 2),
      };
      beliefs.push({ ...update(update(open, heldBack), reading), at: reading.at, odd: false });
      heldBack = undefined;
    } else {
      beliefs.push({
        ...update(before, { value: reading.value, variance: reading.variance + off ** 2 }),
        at: reading.at,
        odd,
      });
      heldBack = reading;
    }
  }
  return beliefs;
};
