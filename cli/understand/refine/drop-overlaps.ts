/** Which of two finds that share words is kept: the more telling kind, then the longer one. Terms of the lexicon may lie over anything. */
import { isOverlapping, type Span } from '../spans.ts';

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

/** The finds that stand, in the order of the line. */
export const dropOverlaps = (spans: readonly Span[]): readonly Span[] => {
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
  return [...kept, ...spans.filter((span) => span.kind === 'term')].sort(
    (one, other) => one.from - other.from || other.to - one.to,
  );
};
