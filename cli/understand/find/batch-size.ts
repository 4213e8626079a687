/** How many birds each of several batches is to have: `two batches of 20`. */
import type { Token } from '../tokens.ts';
import { numberAt } from './number.ts';

const several = new Set(['batches', 'lots', 'rounds']);

/** The number, or null where each batch was not given one. */
export const findBatchSize = (tokens: readonly Token[]): number | null => {
  for (const [at, { word }] of tokens.entries()) {
    if (!several.has(word) || tokens[at + 1]?.word !== 'of') continue;
    const size = numberAt(tokens, at + 2);
    if (size !== null && Number.isInteger(size.value)) return size.value;
  }
  return null;
};
