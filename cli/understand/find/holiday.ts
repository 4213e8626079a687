/** Days by the feast that falls on them: `thanksgiving`, `labor day`, `easter`. */
import { addDays, type Day, weekdayOf } from '../../../engine/day.ts';
import { dayOf } from './calendar.ts';
import { type Hit, type Reader, wordAt } from './day-reader.ts';

const monday = 1;
const thursday = 4;

/** The so-manieth weekday of a month; the last one for 0. */
const nthWeekday = (year: number, month: number, weekday: number, nth: number): Day => {
  const first = dayOf(year, month, 1) ?? '';
  const begin = addDays(first, (weekday - weekdayOf(first) + 7) % 7);
  if (nth > 0) return addDays(begin, 7 * (nth - 1));
  const fifth = addDays(begin, 28);
  return fifth.slice(5, 7) === first.slice(5, 7) ? fifth : addDays(begin, 21);
};

/** Western Easter, by the anonymous Gregorian computus (Meeus, Astronomical Algorithms, chapter 8). */
const easterOf = (year: number): Day => {
  const golden = year % 19;
  const century = Math.floor(year / 100);
  const inCentury = year % 100;
  const leapCenturies = Math.floor(century / 4);
  const moon = Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3);
  const epact = (19 * golden + century - leapCenturies - moon + 15) % 30;
  const week = (32 + 2 * (century % 4) + 2 * Math.floor(inCentury / 4) - epact - (inCentury % 4)) % 7;
  const shift = Math.floor((golden + 11 * epact + 22 * week) / 451);
  const day = epact + week - 7 * shift + 114;
  return dayOf(year, Math.floor(day / 31), (day % 31) + 1) ?? '';
};

const fixed =
  (month: number, date: number) =>
  (year: number): Day =>
    dayOf(year, month, date) ?? '';

const holidays: readonly (readonly [readonly string[], (year: number) => Day])[] = [
  [['thanksgiving', 'day'], (year) => nthWeekday(year, 11, thursday, 4)],
  [['thanksgiving'], (year) => nthWeekday(year, 11, thursday, 4)],
  [['labor', 'day'], (year) => nthWeekday(year, 9, monday, 1)],
  [['labour', 'day'], (year) => nthWeekday(year, 9, monday, 1)],
  [['memorial', 'day'], (year) => nthWeekday(year, 5, monday, 0)],
  [['independence', 'day'], fixed(7, 4)],
  [['fourth', 'of', 'july'], fixed(7, 4)],
  [['easter'], easterOf],
  [['halloween'], fixed(10, 31)],
  [['christmas', 'eve'], fixed(12, 24)],
  [['christmas'], fixed(12, 25)],
  [['xmas'], fixed(12, 25)],
];

/** The feast before today and the one after. */
export const readHoliday: Reader = (tokens, at, today): Hit | null => {
  const found = holidays.find(([words]) => words.every((word, n) => wordAt(tokens, at + n) === word));
  // a north-easter is a wind
  if (found === undefined || (wordAt(tokens, at - 1) === '-' && tokens[at]?.touches === true)) return null;
  const [words, dayIn] = found;
  const year = Number(today.slice(0, 4));
  const days = [year - 1, year, year + 1].map(dayIn);
  const past = days.filter((day) => day <= today).at(-1);
  const future = days.find((day) => day >= today);
  return past === undefined || future === undefined
    ? null
    : { past, future, to: at + words.length, plain: false };
};
