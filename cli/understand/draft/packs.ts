/** Feed in packs of a told size: `8 × 20 kg`, `two 25 kg bags`, `half a 20 kg bag`, `two buckets of 6 kg each`. */
import type { NumberSpan, QuantitySpan } from '../spans.ts';
import { numbers, quantities, type Told } from './told.ts';

export interface Packs {
  /** How many of them; one where only the size is said. */
  readonly count: number;
  readonly size: QuantitySpan;
  /** Whether they are bags, which are also counted as such. */
  readonly isBags: boolean;
  readonly from: number;
}

const bagWords = new Set(['bag', 'bags', 'sack', 'sacks']);
const holders = new Set(
  'bag bags sack sacks bucket buckets pail pails tin tins scoop scoops tub tubs can cans'.split(' '),
);
const joints = new Set(['x', '×', '*', 'of', 'à', 'a', 'and']);
const ones = new Set(['a', 'an', 'one', 'the', 'another']);

const word = (told: Told, at: number): string => told.line.tokens[at]?.word ?? '';

/** The number right in front of a size, past `x` or `half a`. */
const countBefore = (told: Told, size: QuantitySpan): NumberSpan | undefined =>
  numbers(told).find((span) => {
    if (span.to > size.from) return false;
    const between = told.line.tokens.slice(span.to, size.from);
    return between.length <= 2 && between.every((token) => joints.has(token.word));
  });

/** `20 kg bag`, behind its count or an article. */
const sizedBags = (told: Told, size: QuantitySpan): Packs | null => {
  const isBag = bagWords.has(word(told, size.to));
  const count = countBefore(told, size);
  const isTimes = count !== undefined && ['x', '×', '*'].includes(word(told, count.to));
  if (!isBag && !isTimes) return null;
  if (count !== undefined) return { count: count.value, size, isBags: true, from: count.from };
  return isBag && ones.has(word(told, size.from - 1))
    ? { count: 1, size, isBags: true, from: size.from - 1 }
    : null;
};

/** `two buckets each 6 kg`, `2 scoops @ 2.2 lb`, `5 bags, 25 kg`, `two buckets, ten pound a bucket`. */
const heldIn = (told: Told, size: QuantitySpan): Packs | null => {
  const bags = quantities(told, 'bags')[0];
  const counted = numbers(told).find((span) => holders.has(word(told, span.to)) && span.from < size.from);
  const of = bags ?? counted;
  if (of === undefined || of.from > size.from) return null;
  const isEach =
    ['each', '@', 'of', 'à'].includes(word(told, size.from - 1)) ||
    ['each', 'apiece'].includes(word(told, size.to)) ||
    (ones.has(word(told, size.to)) && holders.has(word(told, size.to + 1))) ||
    (holders.has(word(told, size.from - 2)) && ['is', 'holds'].includes(word(told, size.from - 1))) ||
    (bags !== undefined && told.line.tokens[size.from - 1]?.isMark === true);
  return isEach ? { count: of.value, size, isBags: bags !== undefined, from: of.from } : null;
};

/** The packs of a line; null where no size is told with them. */
export const packsIn = (told: Told): Packs | null => {
  for (const size of quantities(told, 'mass')) {
    const packs = sizedBags(told, size) ?? heldIn(told, size);
    if (packs !== null && packs.count > 0) return packs;
  }
  return null;
};
