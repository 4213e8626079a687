/** Learned weights as the bytes of a file. */
import type { Weights } from './pack.ts';

const header = (weights: Weights): string =>
  JSON.stringify({
    topics: weights.topics,
    hidden: weights.hidden,
    unit: weights.unit,
    keys: weights.keys.length,
  });

const inFours = (bytes: number): number => Math.ceil(bytes / 4) * 4;

/** The weights as bytes. Little-endian, as all machines that run Node are. */
export const toBytes = (weights: Weights): Uint8Array => {
  const head = new TextEncoder().encode(header(weights));
  const parts: readonly (Uint32Array | Float32Array | Uint8Array)[] = [
    Uint32Array.of(head.length),
    head,
    weights.rest,
    weights.out,
    weights.base,
    weights.keys,
    weights.scales,
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
  const { topics, hidden, unit, keys } = JSON.parse(new TextDecoder().decode(bytes.subarray(4, 4 + length)));
  let at = byteOffset + 4 + inFours(length);
  const next = (count: number, size: number): number => {
    const here = at;
    at += inFours(count * size);
    return here;
  };
  return {
    topics,
    hidden,
    unit,
    rest: new Float32Array(buffer, next(hidden, 4), hidden),
    out: new Float32Array(buffer, next(hidden * topics.length, 4), hidden * topics.length),
    base: new Float32Array(buffer, next(topics.length, 4), topics.length),
    keys: new Uint32Array(buffer, next(keys, 4), keys),
    scales: new Uint8Array(buffer, next(keys, 1), keys),
    values: new Uint8Array(buffer, next((keys * hidden) / 2, 1), (keys * hidden) / 2),
  };
};
