/** Weekdays and months by name, and the nearest day of that name before or after another. */
import { addDays, type Day, isDay, weekdayOf } from '../../../engine/day.ts';

const weekdayNames = ['sunday', 'monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday'];
const shortWeekdays = new Map([
  ['sun', 0],
  ['mon', 1],
  ['tue', 2],
  ['tues', 2],
  ['wed', 3],
  ['weds', 3],
  ['thu', 4],
  ['thur', 4],
  ['thurs', 4],
  ['fri', 5],
  ['sat', 6],
]);
const monthNames = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];

/** Weekday by its full name, 0 for Sunday. */
export const weekdayNamed = (word: string): number | null => {
  const at = weekdayNames.indexOf(word);
  return at < 0 ? null : at;
};

/** Weekday by a short name such as `thurs`; `sat`, `sun` and `wed` are also other words. */
export const weekdayShort = (word: string): number | null => shortWeekdays.get(word) ?? null;

/** Month, 1 to 12, by name or by its first three letters. */
export const monthNamed = (word: string): number | null => {
  if (word === 'sept') return 9;
  const at = monthNames.findIndex((name) => name === word || (word.length === 3 && name.startsWith(word)));
  return at < 0 ? null : at + 1;
};

/** The full name of a month, 1 to 12. */
export const monthWord = (month: number): string => monthNames[month - 1] ?? '';

/** The latest such weekday up to and including the day. */
export const weekdayBefore = (day: Day, weekday: number): Day =>
  addDays(day, -((weekdayOf(day) - weekday + 7) % 7));

/** The earliest such weekday from the day on, the day included. */
export const weekdayAfter = (day: Day, weekday: number): Day =>
  addDays(day, (weekday - weekdayOf(day) + 7) % 7);

const two = (value: number): string => String(value).padStart(2, '0');

/** A day of a year, or null when there is none such. */
export const dayOf = (year: number, month: number, date: number): Day | null => {
  const day = `${String(year).padStart(4, '0')}-${two(month)}-${two(date)}`;
  return isDay(day) ? day : null;
};

/** The nearest such date on either side of today, today included in both. Null when the month never has it. */
export const dateNear = (today: Day, month: number, date: number): { past: Day; future: Day } | null => {
  const year = Number(today.slice(0, 4));
  // eight years reach over the longest gap between two leap days
  const years = Array.from({ length: 17 }, (_, n) => year - 8 + n);
  const days = years.map((each) => dayOf(each, month, date)).filter((day) => day !== null);
  const past = days.filter((day) => day <= today).at(-1);
  const future = days.find((day) => day >= today);
  return past === undefined || future === undefined ? null : { past, future };
};

/** The nearest days with this date in any month, on either side of today. */
export const dateInMonth = (today: Day, date: number): { past: Day; future: Day } | null => {
  const year = Number(today.slice(0, 4));
  const month = Number(today.slice(5, 7));
  const days = [-2, -1, 0, 1, 2]
    .map((step) =>
      dayOf(year + Math.floor((month - 1 + step) / 12), ((month - 1 + step + 12) % 12) + 1, date),
    )
    .filter((day) => day !== null);
  const past = days.filter((day) => day <= today).at(-1);
  const future = days.find((day) => day >= today);
  return past === undefined || future === undefined ? null : { past, future };
};

/** `Tuesday 5 May`, for saying back which day was understood. */
export const nameDay = (day: Day): string => {
  const weekday = weekdayNames[weekdayOf(day)] ?? '';
  const month = monthNames[Number(day.slice(5, 7)) - 1] ?? '';
  const capital = (word: string): string => word.slice(0, 1).toUpperCase() + word.slice(1);
  return `${capital(weekday)} ${Number(day.slice(8))} ${capital(month)}`;
};
