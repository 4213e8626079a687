/** Day arithmetic on local calendar days written as YYYY-MM-DD text, so that no clock or zone can shift them. */

/** A local calendar day, `YYYY-MM-DD`. Such texts compare rightly with `<` and `>`. */
export type Day = string;

const dayLong = 24 * 60 * 60 * 1000;

/**
 * Midnight of the day in milliseconds, as if every day were 24 hours long and in one zone: all that day sums need. An
 * answer makes thousands of them, and a library that reads and writes dates of any form takes most of its time for that.
 */
const midnight = (day: Day): number =>
  Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10)));

const twoDigits = (number: number): string => (number < 10 ? `0${number}` : String(number));

const written = (at: number): Day => {
  const date = new Date(at);
  return `${date.getUTCFullYear()}-${twoDigits(date.getUTCMonth() + 1)}-${twoDigits(date.getUTCDate())}`;
};

const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const lengthOf = (year: number, month: number): number => {
  const isLeap = month === 2 && year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return isLeap ? 29 : (lengths[month - 1] ?? 0);
};

/**
 * Whether a text is a real calendar day: `2026-02-30` is not. Nor is one of a year that no keeper means: day sums around the
 * years 0 and 9999 would leave the four digits by which days are compared.
 */
export const isDay = (text: string): boolean => {
  if (!/^[12]\d{3}-\d{2}-\d{2}$/.test(text)) return false;
  const day = Number(text.slice(8));
  return day > 0 && day <= lengthOf(Number(text.slice(0, 4)), Number(text.slice(5, 7)));
};

/** The day `count` days after (or, below zero, before) `day`. */
export const addDays = (day: Day, count: number): Day => written(midnight(day) + count * dayLong);

/** Whole days from `earlier` to `later`; negative when the order is reversed. */
export const daysBetween = (earlier: Day, later: Day): number =>
  (midnight(later) - midnight(earlier)) / dayLong;

/** Day of the week, 0 for Sunday to 6 for Saturday. */
export const weekdayOf = (day: Day): number => new Date(midnight(day)).getUTCDay();
