/** Slots that are only read where a question takes them, since elsewhere the same words mean something else. */
import { type Line, wordsUnder } from './find/all.ts';
import { findMonth } from './find/month.ts';
import { findPrice } from './find/price.ts';
import { findWhoAsked } from './find/who.ts';
import { findWhyNot } from './find/why-not.ts';
import { spansOf } from './spans.ts';
import type { Slot } from './types.ts';

/** The kinds of birds that are named and not on the place: `a batch of reds`. */
const kindsIn = ({ spans }: Line): string => {
  const named = spansOf(spans, 'group').filter(({ names }) => names.length === 0);
  return [...new Set(named.flatMap(({ bird }) => bird ?? []))].join(' ');
};

/** The price asked about, the kinds of birds, and the person, for a question that takes them. @param takes names of the slots it takes */
export const slotsTaken = (
  words: string,
  line: Line,
  takes: readonly string[],
): Readonly<Record<string, Slot>> => {
  const price = takes.includes('price-a-bird') ? findPrice(line.tokens, line.spans) : null;
  const who = takes.includes('who') ? findWhoAsked(words, line) : null;
  const kinds = takes.includes('kinds') ? kindsIn(line) : '';
  return {
    ...(kinds === '' ? {} : { kinds }),
    ...(price === null ? {} : { [`price-a-${price.of}`]: price.amount }),
    ...(price === null || price.unit === null ? {} : { unit: price.unit }),
    ...(who === null ? {} : { who }),
  };
};

/** What is asked instead, of a line that asks why an answer is not another one. */
export const slotsOfWhyNot = (words: string, { tokens }: Line): Readonly<Record<string, Slot>> => {
  const from = findWhyNot(tokens);
  if (from === null) return {};
  const month = findMonth(tokens);
  return {
    not: from >= tokens.length ? '' : wordsUnder(words, tokens, from, tokens.length),
    ...(month === null ? {} : { month }),
  };
};
