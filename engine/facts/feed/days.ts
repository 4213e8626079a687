/** Runs of days that the feed models walk over, and the ends of them. */
import { addDays, type Day, daysBetween } from '../../day.ts';

/** Days from one to another, both included; none when they are in the wrong order. */
export const daysFromTo = (from: Day, to: Day): Day[] =>
  Array.from({ length: Math.max(0, daysBetween(from, to) + 1) }, (_, index) => addDays(from, index));

/** The earliest of at least one day. */
export const earliestOf = (first: Day, ...rest: readonly Day[]): Day => [first, ...rest].sort()[0] ?? first;

/** The latest of at least one day. */
export const latestOf = (first: Day, ...rest: readonly Day[]): Day => [first, ...rest].sort().at(-1) ?? first;
