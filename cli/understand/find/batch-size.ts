/** How many birds each of several batches is to have: `two batches of 20`, `a batch of whites and one of reds, 20 each`. */
import type { Token } from '../tokens.ts';
import { numberAt } from './number.ts';

const several = new Set(['batches', 'lots', 'rounds']);

const each = new Set(['each', 'apiece']);

/** `20 each`, `20 birds each`, of batches. */
const sizeOfEach = (tokens: readonly Token[]): number | null => {
  const at = tokens.findIndex(({ word }) => each.has(word));
  const isOfBatches = tokens.some(({ word }) => word === 'batch' || several.has(word));
  if (at < 0 || !isOfBatches) return null;
  const sizes = [at - 1, at - 2].map((from) => (from < 0 ? null : numberAt(tokens, from)));
  return sizes.find((size) => size !== null && Number.isInteger(size.value))?.value ?? null;
};

/** The number, or null where each batch was not given one. */
export const findBatchSize = (tokens: readonly Token[]): number | null => {
  for (const [at, { word }] of tokens.entries()) {
    if (!several.has(word) || tokens[at + 1]?.word !== 'of') continue;
    const size = numberAt(tokens, at + 2);
    if (size !== null && Number.isInteger(size.value)) return size.value;
  }
  return sizeOfEach(tokens);
};
