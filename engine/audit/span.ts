/** Every turn of advice between consecutive days of a span, each with its causes. */
import { addDays, type Day } from '../day.ts';
import type { Answer, Comparison, Difference, Moment, Turning } from '../types.ts';
import { differencesBetween, pointsOf } from './difference.ts';

/** A span of days, both included, and the questions to be put on each of them. */
export interface Span {
  readonly questions: readonly string[];
  readonly from: Day;
  readonly to: Day;
}

/** How the days of a span are looked at. */
export interface Looking {
  /** The answer of a question, without its look ahead. */
  readonly answer: (question: string, moment: Moment) => Promise<Answer>;
  /** Compares two moments by the differences that count. */
  readonly compare: (question: string, then: Moment, now: Moment) => Promise<Comparison>;
  /** Whether a difference is a turn of advice: an amount that follows from the day alone need not be. */
  readonly counts: (difference: Difference) => boolean;
}

/** A day as it was known when it ended: nothing that was written later. */
const atEndOf = (on: Day): Moment => ({ on, asOf: on, lines: null });

/**
 * Goes through a span in the order of its days, and of the questions within a day. Each day is worked out once; causes are
 * looked for only where something turned.
 */
export const auditSpan = async (
  { questions, from, to }: Span,
  { answer, compare, counts }: Looking,
): Promise<readonly Turning[]> => {
  const turnings: Turning[] = [];
  let before = new Map<string, Answer>();
  for (let on = from; on <= to; on = addDays(on, 1)) {
    const today = new Map<string, Answer>();
    for (const question of questions) {
      const now = await answer(question, atEndOf(on));
      today.set(question, now);
      const last = before.get(question);
      const turned =
        last !== undefined && differencesBetween(pointsOf(last, false), pointsOf(now, false)).some(counts);
      if (turned)
        turnings.push({ on, comparison: await compare(question, atEndOf(addDays(on, -1)), atEndOf(on)) });
    }
    before = today;
  }
  return turnings;
};
