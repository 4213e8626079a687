/** Which sums of money stand in a line, and whether they are for one or for all. */
import type { MoneySpan, NumberSpan, QuantitySpan } from '../spans.ts';
import type { Token } from '../tokens.ts';

const signs = new Set(['$', '£', '€', '₹', 'rs', 'inr']);
const names = new Set([
  'dollar',
  'dollars',
  'buck',
  'bucks',
  'quid',
  'rupees',
  'rupee',
  'kroner',
  'kronor',
  'francs',
  'euro',
  'euros',
  'usd',
  'gbp',
  'eur',
]);
const eachWords = new Set(['each', 'apiece', 'ea']);
const totalWords = new Set(['total', 'altogether', 'all', 'overall']);
const things = new Set([
  'bag',
  'bags',
  'sack',
  'bird',
  'chick',
  'chicken',
  'one',
  'piece',
  'lb',
  'pound',
  'kg',
  'kilo',
  'bale',
  'hour',
  'kilowatt',
  'kwh',
]);

const centsOf = (span: NumberSpan): number => Math.round(span.value * 100);

const wordAt = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';

const eachAfter = (tokens: readonly Token[], at: number): { each: boolean | null; to: number } => {
  const word = wordAt(tokens, at);
  const next = wordAt(tokens, at + 1);
  if (eachWords.has(word)) return { each: true, to: at + 1 };
  if (['a', 'per', 'an', '/'].includes(word) && things.has(next)) return { each: true, to: at + 2 };
  if (totalWords.has(word)) return { each: false, to: at + 1 };
  if ((word === 'in' && totalWords.has(next)) || (word === 'for' && ['the', 'all'].includes(next)))
    return { each: false, to: at + 2 };
  return { each: null, to: at };
};

/** Money by its sign or name, by `each` or `a bag` after it, or by `at`, `for` or `paid` before two decimals. */
export const findMoney = (
  tokens: readonly Token[],
  numbers: readonly NumberSpan[],
  measured: readonly QuantitySpan[] = [],
): readonly MoneySpan[] =>
  numbers.flatMap((span): MoneySpan[] => {
    if (span.value < 0) return [];
    const signed = signs.has(wordAt(tokens, span.from - 1));
    const named = names.has(wordAt(tokens, span.to));
    const after = eachAfter(tokens, named ? span.to + 1 : span.to);
    const before = wordAt(tokens, span.from - 1);
    const looks =
      /^\d+\.\d\d$/.test(span.digits ?? '') &&
      ['at', 'for', 'paid', 'cost', '@', 'is', 'are', 'was'].includes(before);
    const priced = after.each === true && span.digits !== null && before !== 'of';
    // "the mean of 12 is 2.05 kg"
    const isMeasure = measured.some(({ from, unit }) => from === span.from && unit !== 'lb');
    if (!(signed || named || (looks && !isMeasure) || priced)) return [];
    const lead = signed ? wordAt(tokens, span.from - 2) : before;
    const each = after.each ?? (lead === 'at' || lead === '@' ? true : null);
    return [
      { kind: 'money', from: signed ? span.from - 1 : span.from, to: after.to, cents: centsOf(span), each },
    ];
  });
