/** Which day or run of days is meant, once it is known whether the line looks back (a record) or ahead (a question). */
import { addDays, type Day } from '../../../engine/day.ts';
import { type Line, wordsUnder } from '../find/all.ts';
import { nameDay } from '../find/calendar.ts';
import { type DaySpan, spansOf } from '../spans.ts';

/** Days as understood; `assumed` says aloud what took reckoning. */
export interface Settled {
  readonly on: Day | null;
  readonly until: Day | null;
  readonly since: Day | null;
  readonly days: number | null;
  readonly assumed: readonly string[];
}

const day = (span: DaySpan, lean: 'past' | 'future'): Day => span[lean];

/** Settles the days of a line. Without any day all is null. */
export const settleDays = (words: string, line: Line, lean: 'past' | 'future'): Settled => {
  const named = spansOf(line.spans, 'day');
  const isNow = ({ from, to }: DaySpan): boolean => line.tokens.slice(from, to).at(-1)?.word === 'now';
  // "since tuesday, I only write it now"
  const others = named.filter((span) => !isNow(span));
  const spans = lean === 'past' && others.length > 0 ? others : named;
  const on = spans.find((span) => span.role === 'on');
  const until = spans.find((span) => span.role === 'until');
  const since = spans.find((span) => span.role === 'since');
  const stretch = spansOf(line.spans, 'stretch')[0];
  const assumed = spans
    .filter((span) => !span.plain)
    .map(
      (span) =>
        `taking ${wordsUnder(words, line.tokens, span.from, span.to)} as ${nameDay(day(span, span.role === 'until' ? 'future' : lean))}`,
    );
  const first = on === undefined ? null : day(on, lean);
  if (stretch !== undefined && until === undefined && lean === 'future') {
    return {
      on: first ?? stretch.first,
      until: first === null ? stretch.last : addDays(first, stretch.days - 1),
      since: null,
      days: stretch.days,
      assumed,
    };
  }
  return {
    on: first,
    until: until === undefined ? null : until.future,
    since: since === undefined ? null : since.past,
    days: null,
    assumed,
  };
};
