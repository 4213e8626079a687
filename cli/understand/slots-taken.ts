/** Slots that are only read where a question takes them, since elsewhere the same words mean something else. */
import type { Line } from './find/all.ts';
import { findPrice } from './find/price.ts';
import { findWhoAsked } from './find/who.ts';
import type { Slot } from './types.ts';

/** The price asked about, and the person, for a question that takes them. @param takes names of the slots it takes */
export const slotsTaken = (
  words: string,
  line: Line,
  takes: readonly string[],
): Readonly<Record<string, Slot>> => {
  const price = takes.includes('price-a-bird') ? findPrice(line.tokens, line.spans) : null;
  const who = takes.includes('who') ? findWhoAsked(words, line) : null;
  return {
    ...(price === null ? {} : { [`price-a-${price.of}`]: price.amount }),
    ...(price === null || price.unit === null ? {} : { unit: price.unit }),
    ...(who === null ? {} : { who }),
  };
};
