/** What the talker has to know to put values into words: the rulebook's words and units, the place's habits, and the day. */
import type { Day } from '../../engine/day.ts';
import type { Rulebook } from '../../engine/types.ts';

export interface Speech {
  readonly book: Rulebook;
  readonly system: 'us' | 'metric';
  /** Put before an amount of money. */
  readonly currency: string;
  /** The keeper's own today, so that a year is only said when it is another one. */
  readonly today: Day;
}
