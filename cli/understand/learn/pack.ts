/** Learned weights small enough to ship: sparse, a byte a weight, features by the hash of their name. */
import { damping, type Model } from './train.ts';

/** Weights by feature: those of feature `n` stand from `starts[n]` up to `starts[n + 1]`, each for the topic in `columns`. */
export interface Weights {
  readonly topics: readonly string[];
  /** What a value of 1 stands for. */
  readonly unit: number;
  /** Hashes of the features, in rising order. */
  readonly keys: Uint32Array;
  readonly starts: Uint32Array;
  readonly columns: Uint8Array;
  readonly values: Int8Array;
}

/** Weights nearer to the middle of their feature than this are left off. */
const least = 0.3;
const largest = 127;

/** FNV-1a over UTF-16 units, 32 bits (Fowler, Noll and Vo; IETF draft-eastlake-fnv). */
const hashOf = (name: string): number => {
  let hash = 0x811c9dc5;
  for (let at = 0; at < name.length; at += 1) {
    hash = Math.imul(hash ^ name.charCodeAt(at), 0x01000193);
  }
  return hash >>> 0;
};

const middle = (row: Float32Array): number => row.toSorted()[row.length >> 1] ?? 0;

/** Packs a model. What is the same for all topics says nothing, so each feature is measured from its middle weight. */
export const pack = (model: Model): Weights => {
  const rows = [...model.rows]
    .map(([feature, row]) => {
      const from = middle(row);
      const cells = [...row.entries()].flatMap(([column, weight]) =>
        Math.abs(weight - from) < least ? [] : [{ column, weight: weight - from }],
      );
      return { key: hashOf(feature), cells };
    })
    .filter(({ cells }) => cells.length > 0)
    .sort((one, other) => one.key - other.key);
  const cells = rows.flatMap((row) => row.cells);
  const most = cells.reduce((far, { weight }) => Math.max(far, Math.abs(weight)), 0);
  const unit = most / largest;
  let start = 0;
  const starts = rows.map((row) => {
    const here = start;
    start += row.cells.length;
    return here;
  });
  return {
    topics: model.topics,
    unit,
    keys: Uint32Array.from(rows, (row) => row.key),
    starts: Uint32Array.from([...starts, start]),
    columns: Uint8Array.from(cells, (cell) => cell.column),
    values: Int8Array.from(cells, (cell) => Math.round(cell.weight / unit)),
  };
};

/** Where a feature's weights stand, or -1. */
const placeOf = (keys: Uint32Array, key: number): number => {
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

/** What one feature of a line adds to each topic, in the order of the topics; null for a feature never met. */
const rowOf = (weights: Weights, feature: string): Float64Array | null => {
  const at = placeOf(weights.keys, hashOf(feature));
  if (at < 0) return null;
  const row = new Float64Array(weights.topics.length);
  for (let cell = weights.starts[at] ?? 0; cell < (weights.starts[at + 1] ?? 0); cell += 1) {
    row[weights.columns[cell] ?? 0] = (weights.values[cell] ?? 0) * weights.unit;
  }
  return row;
};

/** Each known feature's share in the sums of the topics, damped for the length of the line. */
export const sharesOf = (
  weights: Weights,
  features: readonly string[],
): readonly { readonly feature: number; readonly row: Float64Array }[] => {
  const known = features.flatMap((feature, at) => {
    const row = rowOf(weights, feature);
    return row === null ? [] : [{ feature: at, row }];
  });
  const damped = damping(known.length);
  return known.map(({ feature, row }) => ({ feature, row: row.map((weight) => weight * damped) }));
};

const header = (weights: Weights): string =>
  JSON.stringify({
    topics: weights.topics,
    unit: weights.unit,
    keys: weights.keys.length,
    cells: weights.values.length,
  });

const inFours = (bytes: number): number => Math.ceil(bytes / 4) * 4;

/** The weights as bytes, for a file. Little-endian, as all machines that run Node are. */
export const toBytes = (weights: Weights): Uint8Array => {
  const head = new TextEncoder().encode(header(weights));
  const parts: readonly (Uint32Array | Uint8Array | Int8Array)[] = [
    Uint32Array.of(head.length),
    head,
    weights.keys,
    weights.starts,
    weights.columns,
    weights.values,
  ];
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + inFours(part.byteLength), 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(new Uint8Array(part.buffer, part.byteOffset, part.byteLength), at);
    at += inFours(part.byteLength);
  }
  return bytes;
};

/** Reads what `toBytes` wrote; nothing is copied. */
export const fromBytes = (file: Uint8Array): Weights => {
  const bytes = file.byteOffset % 4 === 0 ? file : file.slice();
  const { buffer, byteOffset } = bytes;
  const length = new Uint32Array(buffer, byteOffset, 1)[0] ?? 0;
  const { topics, unit, keys, cells } = JSON.parse(new TextDecoder().decode(bytes.subarray(4, 4 + length)));
  const first = byteOffset + 4 + inFours(length);
  const second = first + keys * 4;
  const third = second + (keys + 1) * 4;
  return {
    topics,
    unit,
    keys: new Uint32Array(buffer, first, keys),
    starts: new Uint32Array(buffer, second, keys + 1),
    columns: new Uint8Array(buffer, third, cells),
    values: new Int8Array(buffer, third + inFours(cells), cells),
  };
};
