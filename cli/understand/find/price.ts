/** The price of a bird, or of a weight of meat, that a line asks about. */
import type { Span } from '../spans.ts';
import { spansOf } from '../spans.ts';
import type { Token } from '../tokens.ts';

export interface AskedPrice {
  readonly of: 'bird' | 'weight';
  readonly amount: number;
  /** `money/lb` or `money/kg`; null for a price of a bird. */
  readonly unit: string | null;
}

const hundredths = 100;
const unitOfWeight: ReadonlyMap<string, string> = new Map([
  ['lb', 'money/lb'],
  ['lbs', 'money/lb'],
  ['pound', 'money/lb'],
  ['pounds', 'money/lb'],
  ['kg', 'money/kg'],
  ['kilo', 'money/kg'],
  ['kilogram', 'money/kg'],
  ['kilogramme', 'money/kg'],
]);
const things = new Set(
  'bird birds chick chicks chicken chickens white whites red reds people days weeks'.split(' '),
);
const perWords = new Set(['a', 'an', 'per', 'the', 'each', '/', 'for', 'every']);

/** The weight that a price is for, in the words right behind it. */
const weightBehind = (tokens: readonly Token[], from: number): string | null => {
  for (const token of tokens.slice(from, from + 3)) {
    const unit = unitOfWeight.get(token.word);
    if (unit !== undefined) return unit;
    if (!perWords.has(token.word)) return null;
  }
  return null;
};

/**
 * The first sum of money in a line, or where none is marked as money the first bare number that does not count
 * something; null for none.
 */
export const findPrice = (tokens: readonly Token[], spans: readonly Span[]): AskedPrice | null => {
  const [money] = spansOf(spans, 'money');
  const bare = spansOf(spans, 'number').find(
    (span) => span.value > 0 && !things.has(tokens[span.to]?.word ?? '') && tokens[span.to]?.word !== '%',
  );
  const found = money ?? bare;
  if (found === undefined) return null;
  const amount = found.kind === 'money' ? found.cents / hundredths : found.value;
  // Money that is "a pound" has those words inside its span; a bare number has them behind it.
  const inside = tokens.slice(found.from, found.to).map(({ word }) => unitOfWeight.get(word));
  const unit = inside.find((each) => each !== undefined) ?? weightBehind(tokens, found.to);
  return { of: unit === null ? 'bird' : 'weight', amount, unit };
};
