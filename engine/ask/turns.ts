/** When a verdict turns: found by running the same rules again for the days to come, never by a formula of its own. */
import { addDays, type Day } from '../day.ts';
import type { Assumed, Gives, Value } from '../types.ts';
import { type Evaluation, verdictOf } from './evaluate.ts';

/** One fact supposed to have another value, of one group or of the flock. */
export interface Trial {
  readonly fact: string;
  readonly group: string | null;
  readonly value: Value;
}

/** Evaluates the same question for the same group on another day or with facts supposed. */
export type Again = (change: {
  readonly on?: Day;
  readonly suppose?: readonly Trial[];
}) => Promise<Evaluation>;

/** Only a yes or a no is something to turn to; what cannot be said, or is no verdict, is not. */
export const isSettled = (verdict: Gives): boolean => verdict === 'yes' || verdict === 'no';

export interface Turn {
  readonly on: Day;
  readonly verdict: Gives;
  readonly assumed: readonly Assumed[];
}

/** The first day within the look-ahead on which the verdict is another one that is settled, or null. */
export const firstTurn = async (
  now: Evaluation,
  again: Again,
  from: Day,
  days: number,
): Promise<Turn | null> => {
  const verdict = verdictOf(now);
  for (let ahead = 1; ahead <= days; ahead += 1) {
    const on = addDays(from, ahead);
    const then = await again({ on });
    const next = verdictOf(then);
    if (next !== verdict && isSettled(next)) {
      return { on, verdict: next, assumed: then.workings.steps().flatMap((step) => step.assumed) };
    }
  }
  return null;
};
