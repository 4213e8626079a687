/** Learned weights small enough to ship: half a byte a weight, features by the hash of their name. */
import type { Model } from './train.ts';

/** A model as it ships. Feature `n` adds `values` (half bytes, from `n * hidden / 2` on) times `scales[n]` times `unit`. */
export interface Weights {
  readonly topics: readonly string[];
  /** How many hidden units; even. */
  readonly hidden: number;
  /** What one step of a scale stands for. */
  readonly unit: number;
  readonly rest: Float32Array;
  readonly out: Float32Array;
  readonly base: Float32Array;
  /** Hashes of the features, in rising order. */
  readonly keys: Uint32Array;
  readonly scales: Uint8Array;
  readonly values: Uint8Array;
}

/** The largest value of half a byte to either side of its middle, and the largest scale. */
const largest = 7;
const middle = 8;
const largestScale = 255;

/** FNV-1a over UTF-16 units, 32 bits (Fowler, Noll and Vo; IETF draft-eastlake-fnv). */
export const hashOf = (name: string): number => {
  let hash = 0x811c9dc5;
  for (let at = 0; at < name.length; at += 1) {
    hash = Math.imul(hash ^ name.charCodeAt(at), 0x01000193);
  }
  return hash >>> 0;
};

const widest = (row: Float32Array): number => row.reduce((far, weight) => Math.max(far, Math.abs(weight)), 0);

const halfByte = (weight: number, by: number): number =>
  middle + Math.max(-largest, Math.min(largest, Math.round(weight / by)));

/** Packs a model. */
export const pack = ({ topics, rows, rest, out, base }: Model): Weights => {
  const sorted = [...rows]
    .map(([feature, row]) => ({ key: hashOf(feature), row, reach: widest(row) }))
    .sort((one, other) => one.key - other.key);
  const unit = sorted.reduce((far, { reach }) => Math.max(far, reach), 0) / largest / largestScale;
  const scaled = sorted.map(({ row, reach }) => ({
    row,
    scale: Math.max(1, Math.ceil(reach / largest / unit)),
  }));
  const values = scaled.flatMap(({ row, scale }) =>
    Array.from(
      { length: row.length / 2 },
      (_, at) =>
        halfByte(row[2 * at] ?? 0, scale * unit) | (halfByte(row[2 * at + 1] ?? 0, scale * unit) << 4),
    ),
  );
  return {
    topics,
    hidden: rest.length,
    unit,
    rest,
    out,
    base,
    keys: Uint32Array.from(sorted, (each) => each.key),
    scales: Uint8Array.from(scaled, (each) => each.scale),
    values: Uint8Array.from(values),
  };
};

/** Where a feature stands among the keys, or -1 for one never met. */
export const placeOf = ({ keys }: Weights, feature: string): number => {
  const key = hashOf(feature);
  let low = 0;
  let high = keys.length - 1;
  while (low <= high) {
    const half = (low + high) >> 1;
    const here = keys[half] ?? 0;
    if (here === key) return half;
    if (here < key) low = half + 1;
    else high = half - 1;
  }
  return -1;
};

/** Adds what the feature at a place says, times `by`, to the hidden units. */
export const addRow = (
  { hidden, scales, unit, values }: Weights,
  place: number,
  by: number,
  units: Float64Array,
): void => {
  const step = (scales[place] ?? 0) * unit * by;
  const from = (place * hidden) / 2;
  for (let at = 0; at < hidden; at += 2) {
    const pair = values[from + at / 2] ?? 0;
    units[at] = (units[at] ?? 0) + ((pair & 15) - middle) * step;
    units[at + 1] = (units[at + 1] ?? 0) + ((pair >> 4) - middle) * step;
  }
};
