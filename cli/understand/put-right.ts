/** Whether a line puts an amount right that was told before: `no, 3 not 2`, `sorry, the low was 41, not 51`, `no, three`. */
import type { Line } from './find/all.ts';
import type { MoneySpan, NumberSpan, QuantitySpan, Span } from './spans.ts';

/** The amount that is right, and the one it takes the place of; null where only the right one was said. Both as said, in no base unit. */
export interface PutRight {
  readonly now: number;
  readonly was: number | null;
}

type Amount = NumberSpan | QuantitySpan | MoneySpan;

/** Words that a correction without the old amount begins with. */
const refusals = new Set('no nope nah sorry oops wait correction actually'.split(' '));
/** What may stand beside the one amount of such a line. */
const beside = new Set(
  'no oh it was were is that should be only just i mean meant make sorry actually'.split(' '),
);

/** How far behind `not` the old amount may stand: `not just the 2`. */
const reach = 3;

const isAmount = (span: Span): span is Amount => ['number', 'quantity', 'money'].includes(span.kind);

const amountOf = (span: Amount): number => (span.kind === 'money' ? span.cents / 100 : span.value);

/** Finds what a line puts right; null for a question and for any line that says more than that. */
export const findPutRight = ({ tokens, spans }: Line): PutRight | null => {
  if (tokens.some(({ word }) => word === '?')) return null;
  const amounts = spans.filter(isAmount).toSorted((one, other) => one.from - other.from);
  const [first, second] = amounts;
  if (first === undefined || amounts.length > 2) return null;
  if (second === undefined) {
    const isBare = tokens.every(
      ({ word, isMark }, at) =>
        isMark || (first.from <= at && at < first.to) || refusals.has(word) || beside.has(word),
    );
    return isBare && refusals.has(tokens[0]?.word ?? '') ? { now: amountOf(first), was: null } : null;
  }
  const isDenied = ({ from }: Amount): boolean =>
    tokens.slice(Math.max(0, from - reach), from).some(({ word }) => word === 'not');
  if (isDenied(second) && !isDenied(first)) return { now: amountOf(first), was: amountOf(second) };
  if (isDenied(first)) return { now: amountOf(second), was: amountOf(first) };
  return null;
};
