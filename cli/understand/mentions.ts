/** What a line mentions beside its topic: causes, signs and ideas of the lexicon, each once, a phrase inside a longer one left out. */
import type { Line } from './find/all.ts';
import { spansOf, type TermSpan } from './spans.ts';
import type { Mentions } from './types.ts';

const isInside = (one: TermSpan, other: TermSpan): boolean =>
  other.from <= one.from && one.to <= other.to && other.to - other.from > one.to - one.from;

/** The causes, signs and ideas that stand in a line, in its order. */
export const mentionsIn = (line: Line): Mentions => {
  const idsOf = (list: TermSpan['list']): readonly string[] => {
    const terms = spansOf(line.spans, 'term').filter((span) => span.list === list);
    const whole = terms.filter((span) => !terms.some((other) => isInside(span, other)));
    return [...new Set(whole.map((span) => span.id))];
  };
  return { causes: idsOf('cause'), signs: idsOf('sign'), ideas: idsOf('idea') };
};
