/** Rounding, units and days in words: the only place where a number becomes text. */
import { type Day, weekdayOf } from '../../engine/day.ts';
import type { Quantity, Shown, Unit } from '../../engine/types.ts';
import { fromBase, shownUnit, toBase, unitOf } from '../../engine/units.ts';
import { sayNamed } from './named.ts';
import type { Speech } from './speech.ts';

const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** A day as people say it: `Saturday 16 May`, with the year when it is not this year. */
export const sayDay = (day: Day, today: Day): string => {
  const [year, month, date] = day.split('-').map(Number);
  const words = `${weekdays[weekdayOf(day)]} ${date} ${months[(month ?? 1) - 1]}`;
  return day.slice(0, 4) === today.slice(0, 4) ? words : `${words} ${year}`;
};

/** A local day and time, `2026-05-16T07:00`, as people say it: `Saturday 16 May at 07:00`. */
export const sayTime = (time: string, today: Day): string =>
  `${sayDay(time.slice(0, 10), today)} at ${time.slice(11, 16)}`;

/** A day, or a day and time. */
export const sayWhenDue = ({ today }: Speech, by: string): string =>
  by.includes('T') ? sayTime(by, today) : sayDay(by, today);

/** So many decimals, without zeros that say nothing. */
const round = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return trimmed === '-0' ? '0' : trimmed.replace('-', '−');
};

/** A value in the unit it is shown in at this place, unrounded. `word` names the fact, which may have a unit of its own. */
export const inShownUnit = (
  speech: Speech,
  value: number,
  unit: string,
  word?: string,
): { readonly value: number; readonly unit: string } => {
  const { units, facts, figures } = speech.book;
  const own = word === undefined ? undefined : (facts[word] ?? figures[word])?.shown?.[speech.system];
  const to = own ?? shownUnit(units, unit, speech.system);
  if (to === unit) return { value, unit };
  return { value: fromBase(units, toBase(units, { value, unit }), to), unit: to };
};

/** Odds as people say them, nearest first fit: `3 in 4`, `1 in 40`. */
const sayOdds = (chance: number): string => {
  const plain = [
    [0.95, 'nearly all'],
    [0.85, '9 in 10'],
    [0.7, '3 in 4'],
    [0.58, '2 in 3'],
  ] as const;
  const found = plain.find(([least]) => chance >= least);
  if (found !== undefined) return found[1];
  if (chance <= 0) return 'none';
  const many = 1 / chance;
  if (many > 1000) return 'fewer than 1 in 1000';
  return `1 in ${many < 10 ? Math.max(2, Math.round(many)) : Number(many.toPrecision(many < 100 ? 1 : 2))}`;
};

/** Below one a decimal more, where much would otherwise be lost; on the scale of a thermometer nothing is. */
const decimalsFor = (value: number, { dimension, decimals }: Unit): number =>
  Math.abs(value) < 1 && decimals < 2 && dimension !== 'temperature' ? decimals + 1 : decimals;

const sayNumber = (speech: Speech, value: number, unitId: string, word?: string): string => {
  const shown = inShownUnit(speech, value, unitId, word);
  const unit = unitOf(speech.book.units, shown.unit);
  if (unit === undefined) return String(value);
  if (unit.dimension === 'money') return `${speech.currency}${shown.value.toFixed(2)}`;
  if (unit.dimension === 'money-per-mass') return `${speech.currency}${shown.value.toFixed(2)} ${unit.one}`;
  if (unit.dimension === 'odds') return sayOdds(shown.value);
  if (unit.dimension === 'ratio') {
    const percent = unit.id === 'percent' ? shown.value : shown.value * 100;
    return `${round(percent, Math.abs(percent) < 10 ? 1 : 0)}%`;
  }
  const number = round(shown.value, decimalsFor(shown.value, unit));
  return `${number} ${number === '1' ? unit.one : unit.many}`.trimEnd();
};

/** A quantity in the unit it was typed in, as for reading a record back: nothing is rounded or converted. */
export const sayAsTyped = ({ book }: Speech, { value, unit }: Quantity): string => {
  const words = unitOf(book.units, unit);
  if (words === undefined) return `${value} ${unit}`;
  if (words.dimension === 'ratio') return `${value}${words.many}`;
  return `${value} ${value === 1 ? words.one : words.many}`.trimEnd();
};

/**
 * A value in words with its unit: `38 °F`, `1 bird`, `Saturday 16 May`, `yes`, `not known`.
 * @param word the fact or figure it belongs to, where that has a unit of its own to be shown in
 */
export const sayValue = (speech: Speech, { value, unit }: Shown, word?: string): string => {
  if (value === null) return 'not known';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (unit === 'date') return sayDay(String(value), speech.today);
  if (unit === 'date-time') return sayTime(String(value), speech.today);
  if (unit === 'named') return sayNamed(speech, String(value));
  if (typeof value === 'string') return value;
  return unit === null ? round(value, 2) : sayNumber(speech, value, unit, word);
};
