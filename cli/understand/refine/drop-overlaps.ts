/** Which of two finds that share words is kept: the more telling kind, then the longer one. Terms of the lexicon may lie over anything. */
import { isOverlapping, type Span, spansOf } from '../spans.ts';
import type { Token } from '../tokens.ts';

/** Most telling first: `3 may` is a day before it is a number. */
const order: readonly Span['kind'][] = [
  'size',
  'time',
  'age',
  'day',
  'stretch',
  'money',
  'quantity',
  'group',
  'number',
];

/** A day told by its number, as `may 19`, whose words have no meaning of their own; `last night` keeps its night. */
const isNumbered = (span: Span, tokens: readonly Token[]): boolean =>
  span.kind === 'day' && tokens.slice(span.from, span.to).some((token) => /^\d/.test(token.word));

/** The finds that stand, in the order of the line. */
export const dropOverlaps = (spans: readonly Span[], tokens: readonly Token[]): readonly Span[] => {
  const kept: Span[] = [];
  const ranked = spans
    .filter((span) => span.kind !== 'term')
    .sort(
      (one, other) =>
        order.indexOf(one.kind) - order.indexOf(other.kind) || other.to - other.from - (one.to - one.from),
    );
  for (const span of ranked) {
    if (!kept.some((other) => isOverlapping(span, other))) kept.push(span);
  }
  const dates = kept.filter((span) => isNumbered(span, tokens));
  const terms = spansOf(spans, 'term').filter(
    (term) => !dates.some((date) => date.from <= term.from && term.to <= date.to),
  );
  return [...kept, ...terms].sort((one, other) => one.from - other.from || other.to - one.to);
};
