/**
 * Learns which features of a line speak for which topic: softmax regression, the plainest model that weighs overlapping
 * features against each other. Trained by AdaGrad (Duchi, Hazan and Singer 2011) with features dropped at random
 * (Srivastava et al. 2014), so that no single word is leant on. The same examples give the same weights.
 */

/** One labelled line: its features, and the topics it may be taken for, the one meant first. */
export interface Example {
  readonly features: readonly string[];
  readonly topics: readonly string[];
}

/** A weight for each topic, by feature; longer lines are damped by `damping`. */
export interface Model {
  readonly topics: readonly string[];
  readonly rows: ReadonlyMap<string, Float32Array>;
}

/** How a model is trained; set by leaving one voice after the other out, and no knowledge of the trade. */
export interface Training {
  readonly rounds: number;
  readonly rate: number;
  /** Share of a line's features left out in each round. */
  readonly dropped: number;
  /** Pull of every weight towards zero. */
  readonly pull: number;
}

/** How much the topic meant counts beside others that are a fair reading too. */
const meant = 0.75;
/** Smaller errors than this teach nothing and cost time. */
const leastError = 1e-3;

/** What a sum of weights is multiplied with, so that long lines are no surer than short ones. */
export const damping = (features: number): number => 4 / Math.sqrt(Math.max(1, features));

/** A sequence of numbers from 0 to 1 that is the same everywhere (Park and Miller 1988). */
const numbersFrom = (start: number): (() => number) => {
  let state = start;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
};

const shuffle = (order: Int32Array, next: () => number): void => {
  for (let last = order.length - 1; last > 0; last -= 1) {
    const other = Math.floor(next() * (last + 1));
    const kept = order[last] ?? 0;
    order[last] = order[other] ?? 0;
    order[other] = kept;
  }
};

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

const number = (examples: readonly Example[]): ReadonlyMap<string, number> => {
  const numbers = new Map<string, number>();
  for (const { features } of examples) {
    for (const feature of features) if (!numbers.has(feature)) numbers.set(feature, numbers.size);
  }
  return numbers;
};

/** Trains a model. Topics come out in the order of their names. */
export const train = (examples: readonly Example[], training: Training): Model => {
  const topics = [...new Set(examples.flatMap((each) => each.topics))].sort();
  const columns = new Map(topics.map((topic, at) => [topic, at]));
  const numbers = number(examples);
  const width = topics.length;
  const weights = new Float32Array(numbers.size * width);
  const squares = new Float32Array(numbers.size * width).fill(1e-6);
  const lines = examples.map(({ features, topics: [first = '', ...others] }) => {
    const wanted = new Map([[columns.get(first) ?? 0, others.length === 0 ? 1 : meant]]);
    for (const other of others) wanted.set(columns.get(other) ?? 0, (1 - meant) / others.length);
    return { ids: Int32Array.from(features, (feature) => numbers.get(feature) ?? 0), wanted };
  });
  const next = numbersFrom(1);
  const order = Int32Array.from(lines.keys());
  const sums = new Float64Array(width);
  for (let round = 0; round < training.rounds; round += 1) {
    shuffle(order, next);
    for (const at of order) {
      const line = lines[at];
      if (line === undefined) continue;
      const ids = line.ids.filter(() => next() >= training.dropped);
      const damped = damping(ids.length);
      sums.fill(0);
      for (const id of ids) {
        const from = id * width;
        for (let column = 0; column < width; column += 1)
          sums[column] = (sums[column] ?? 0) + (weights[from + column] ?? 0);
      }
      for (let column = 0; column < width; column += 1) sums[column] = (sums[column] ?? 0) * damped;
      toChances(sums);
      for (const [column, share] of line.wanted) sums[column] = (sums[column] ?? 0) - share;
      for (let column = 0; column < width; column += 1) {
        const error = (sums[column] ?? 0) * damped;
        if (Math.abs(error) < leastError) continue;
        for (const id of ids) {
          const cell = id * width + column;
          const weight = weights[cell] ?? 0;
          const slope = error + training.pull * weight;
          const square = (squares[cell] ?? 0) + slope * slope;
          squares[cell] = square;
          weights[cell] = weight - (training.rate * slope) / Math.sqrt(square);
        }
      }
    }
  }
  return {
    topics,
    rows: new Map(
      [...numbers].map(([feature, id]) => [feature, weights.subarray(id * width, (id + 1) * width)]),
    ),
  };
};
