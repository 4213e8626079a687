/** Day arithmetic on local calendar days written as YYYY-MM-DD text, so that no clock or zone can shift them. */
import { addDays as add, differenceInCalendarDays, formatISO, isValid, parseISO } from 'date-fns';

/** A local calendar day, `YYYY-MM-DD`. Such texts compare rightly with `<` and `>`. */
export type Day = string;

/**
 * Whether a text is a real calendar day: `2026-02-30` is not. Nor is one of a year that no keeper means: day sums around the
 * years 0 and 9999 would leave the four digits by which days are compared.
 */
export const isDay = (text: string): boolean =>
  /^[12]\d{3}-\d{2}-\d{2}$/.test(text) && isValid(parseISO(text));

/** The day `count` days after (or, below zero, before) `day`. */
export const addDays = (day: Day, count: number): Day =>
  formatISO(add(parseISO(day), count), { representation: 'date' });

/** Whole days from `earlier` to `later`; negative when the order is reversed. */
export const daysBetween = (earlier: Day, later: Day): number =>
  differenceInCalendarDays(parseISO(later), parseISO(earlier));

/** Day of the week, 0 for Sunday to 6 for Saturday. */
export const weekdayOf = (day: Day): number => parseISO(day).getDay();
