/**
 * Learns which features of a line speak for which topic: a net of one hidden layer of rectified units (Glorot, Bordes and
 * Bengio 2011) with a softmax over the topics. Trained by AdaGrad (Duchi, Hazan and Singer 2011), one step size a feature,
 * with features and units dropped at random (Srivastava et al. 2014), so that no single word is leant on. The same examples
 * give the same weights.
 */
import { numbersFrom, shuffle } from './draws.ts';

/** One labelled line: its features, and the topics it may be taken for, the one meant first. */
export interface Example {
  readonly features: readonly string[];
  readonly topics: readonly string[];
}

/** What was learned. Sums of features go to the hidden units, those above zero to the topics. */
export interface Model {
  readonly topics: readonly string[];
  /** What each feature adds to each hidden unit, before damping. */
  readonly rows: ReadonlyMap<string, Float32Array>;
  /** Where the hidden units stand without any feature. */
  readonly rest: Float32Array;
  /** What a hidden unit adds to each topic: one row of topics a unit. */
  readonly out: Float32Array;
  /** Where the topics stand without any unit. */
  readonly base: Float32Array;
}

/** How a model is trained; set by leaving whole voices out, and no knowledge of the trade. */
export interface Training {
  readonly hidden: number;
  readonly rounds: number;
  readonly rate: number;
  /** Shares of a line's features, and of the hidden units, left out in each step. */
  readonly dropped: { readonly features: number; readonly hidden: number };
}

/** How much the topic meant counts beside others that are a fair reading too. */
const meant = 0.75;
/** Smaller errors than this teach nothing and cost time. */
const leastError = 1e-3;
/** The step has shrunk by so much in the last round. */
const slowed = 0.7;
/** Widest first weight, drawn evenly to both sides. */
const widest = 0.17;
/** What squares of slopes begin with, so that a first step is no leap. */
const firstSquare = 1e-4;

/** What a sum over features is multiplied with, so that long lines are no surer than short ones. */
export const damping = (features: number): number => 1 / Math.sqrt(Math.max(1, features));

/** Turns sums into chances, in place. */
export const toChances = (sums: Float64Array): Float64Array => {
  const most = Math.max(...sums);
  let all = 0;
  for (const [at, sum] of sums.entries()) {
    const chance = Math.exp(sum - most);
    sums[at] = chance;
    all += chance;
  }
  for (const [at, chance] of sums.entries()) sums[at] = chance / all;
  return sums;
};

const numbered = (examples: readonly Example[]): ReadonlyMap<string, number> => {
  const numbers = new Map<string, number>();
  for (const { features } of examples) {
    for (const feature of features) if (!numbers.has(feature)) numbers.set(feature, numbers.size);
  }
  return numbers;
};

interface Lesson {
  readonly ids: Int32Array;
  readonly wanted: ReadonlyMap<number, number>;
}

const lessonsOf = (
  examples: readonly Example[],
  numbers: ReadonlyMap<string, number>,
  topics: readonly string[],
): readonly Lesson[] => {
  const columns = new Map(topics.map((topic, at) => [topic, at]));
  return examples.map(({ features, topics: [first = '', ...others] }) => {
    const wanted = new Map([[columns.get(first) ?? 0, others.length === 0 ? 1 : meant]]);
    for (const other of others) wanted.set(columns.get(other) ?? 0, (1 - meant) / others.length);
    return { ids: Int32Array.from(features, (feature) => numbers.get(feature) ?? 0), wanted };
  });
};

/** Trains a model. Topics come out in the order of their names. */
export const train = (examples: readonly Example[], training: Training): Model => {
  const { hidden, rounds, dropped } = training;
  const topics = [...new Set(examples.flatMap((each) => each.topics))].sort();
  const width = topics.length;
  const numbers = numbered(examples);
  const lessons = lessonsOf(examples, numbers, topics);
  const next = numbersFrom(1);
  const even = (): number => (next() * 2 - 1) * widest;

  const rows = Float32Array.from({ length: numbers.size * hidden }, even);
  const rowSquares = new Float32Array(numbers.size).fill(firstSquare);
  const out = Float32Array.from({ length: hidden * width }, even);
  const outSquares = new Float32Array(hidden * width).fill(firstSquare);
  const rest = new Float32Array(hidden);
  const restSquares = new Float32Array(hidden).fill(firstSquare);
  const base = new Float32Array(width);
  const baseSquares = new Float32Array(width).fill(firstSquare);

  const units = new Float64Array(hidden);
  const slopes = new Float64Array(hidden);
  const sums = new Float64Array(width);
  const kept = 1 - dropped.hidden;

  const hear = (ids: Int32Array, damped: number): void => {
    units.set(rest);
    for (const id of ids) {
      const from = id * hidden;
      for (let unit = 0; unit < hidden; unit += 1)
        units[unit] = (units[unit] ?? 0) + (rows[from + unit] ?? 0) * damped;
    }
    sums.set(base);
    for (let unit = 0; unit < hidden; unit += 1) {
      const value = next() < dropped.hidden ? 0 : Math.max(0, units[unit] ?? 0) / kept;
      units[unit] = value;
      if (value === 0) continue;
      const from = unit * width;
      for (let column = 0; column < width; column += 1)
        sums[column] = (sums[column] ?? 0) + value * (out[from + column] ?? 0);
    }
    toChances(sums);
  };

  /** `sums` holds the errors of the topics here. */
  const mend = (ids: Int32Array, damped: number, rate: number): void => {
    slopes.fill(0);
    for (let unit = 0; unit < hidden; unit += 1) {
      const value = units[unit] ?? 0;
      if (value === 0) continue;
      const from = unit * width;
      let slope = 0;
      for (let column = 0; column < width; column += 1) {
        const error = sums[column] ?? 0;
        if (error < leastError && error > -leastError) continue;
        slope += error * (out[from + column] ?? 0);
        const slopeHere = error * value;
        const square = (outSquares[from + column] ?? 0) + slopeHere * slopeHere;
        outSquares[from + column] = square;
        out[from + column] = (out[from + column] ?? 0) - (rate * slopeHere) / Math.sqrt(square);
      }
      slopes[unit] = slope / kept;
      restSquares[unit] = (restSquares[unit] ?? 0) + (slope / kept) ** 2;
      rest[unit] = (rest[unit] ?? 0) - (rate * slope) / kept / Math.sqrt(restSquares[unit] ?? 1);
    }
    for (let column = 0; column < width; column += 1) {
      const error = sums[column] ?? 0;
      baseSquares[column] = (baseSquares[column] ?? 0) + error * error;
      base[column] = (base[column] ?? 0) - (rate * error) / Math.sqrt(baseSquares[column] ?? 1);
    }
    const square = slopes.reduce((all, slope) => all + slope * slope, 0) * damped * damped;
    for (const id of ids) {
      const soFar = (rowSquares[id] ?? 0) + square / hidden;
      rowSquares[id] = soFar;
      const stride = (rate * damped) / Math.sqrt(soFar);
      const from = id * hidden;
      for (let unit = 0; unit < hidden; unit += 1)
        rows[from + unit] = (rows[from + unit] ?? 0) - stride * (slopes[unit] ?? 0);
    }
  };

  const order = Int32Array.from(lessons.keys());
  for (let round = 0; round < rounds; round += 1) {
    const rate = training.rate * (1 - (slowed * round) / rounds);
    shuffle(order, next);
    for (const at of order) {
      const lesson = lessons[at];
      if (lesson === undefined) continue;
      const ids = lesson.ids.filter(() => next() >= dropped.features);
      const damped = damping(ids.length);
      hear(ids, damped);
      for (const [column, share] of lesson.wanted) sums[column] = (sums[column] ?? 0) - share;
      mend(ids, damped, rate);
    }
  }
  return {
    topics,
    rows: new Map(
      [...numbers].map(([feature, id]) => [feature, rows.subarray(id * hidden, (id + 1) * hidden)]),
    ),
    rest,
    out,
    base,
  };
};
