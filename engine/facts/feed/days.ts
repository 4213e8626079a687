/** Runs of days that the feed models walk over. */
import { addDays, type Day, daysBetween } from '../../day.ts';

/** Days from one to another, both included; none when they are in the wrong order. */
export const daysFromTo = (from: Day, to: Day): Day[] =>
  Array.from({ length: Math.max(0, daysBetween(from, to) + 1) }, (_, index) => addDays(from, index));
