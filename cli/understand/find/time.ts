/** Which times of day stand in a line: `07:30`, `6am`, `8 o'clock`, `8 saturday morning`, `start at nine`. */
import type { NumberSpan, TimeSpan } from '../spans.ts';
import type { Token } from '../tokens.ts';
import { weekdayNamed, weekdayShort } from './calendar.ts';

const pad = (value: number): string => String(value).padStart(2, '0');
const word = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';

/** `07:00`, `7:30 pm`. */
const clockAt = (tokens: readonly Token[], at: number): TimeSpan | null => {
  const found = /^(\d{1,2}):(\d{2})$/.exec(word(tokens, at));
  if (found === null || Number(found[1]) > 23 || Number(found[2]) > 59) return null;
  const later = word(tokens, at + 1) === 'pm' && Number(found[1]) < 12 ? 12 : 0;
  const to = at + (['am', 'pm'].includes(word(tokens, at + 1)) ? 2 : 1);
  return { kind: 'time', from: at, to, at: `${pad(Number(found[1]) + later)}:${found[2]}` };
};

const isHour = ({ value }: NumberSpan): boolean => Number.isInteger(value) && value >= 0 && value <= 12;

/** `6am`, `8 o'clock`. */
const spokenAt = (tokens: readonly Token[], span: NumberSpan): TimeSpan | null => {
  const half = word(tokens, span.to);
  if (!['am', 'pm', 'oclock'].includes(half)) return null;
  const hour = half === 'oclock' ? span.value : (span.value % 12) + (half === 'pm' ? 12 : 0);
  return { kind: 'time', from: span.from, to: span.to + 1, at: `${pad(hour)}:00` };
};

const beginnings = new Set(
  'start starts starting started begin begins beginning commencing commence kill kicking'.split(' '),
);
const leads = new Set(['at', 'from', 'by']);
const evenings = new Set(['afternoon', 'evening', 'tonight']);
const parts = new Set(['morning', 'sharp', ...evenings]);

/** A bare hour behind a word of beginning, or between `at` and a day or its part: `start at nine`, `at 8 saturday morning`. */
const bareAt = (tokens: readonly Token[], span: NumberSpan): TimeSpan | null => {
  const before = word(tokens, span.from - 1);
  const begins = leads.has(before) && beginnings.has(word(tokens, span.from - 2));
  const skip = ['in', 'on', 'this'].includes(word(tokens, span.to)) ? 1 : 0;
  const at = span.to + skip + (word(tokens, span.to + skip) === 'the' ? 1 : 0);
  const next = word(tokens, at);
  const isDay = (weekdayNamed(next) ?? weekdayShort(next)) !== null || next === 'tomorrow';
  const isPart = parts.has(next);
  // Without such a word in front it may as well be a count: "lost 2 saturday morning".
  if (!begins && !(leads.has(before) && (isPart || isDay))) return null;
  const isLate = evenings.has(next) || (isDay && evenings.has(word(tokens, at + 1)));
  const hour = span.value + (isLate && span.value < 12 ? 12 : 0);
  return { kind: 'time', from: span.from, to: span.to, at: `${pad(hour)}:00` };
};

/** `0700`, `at 1420`: four digits that are a time, and no weight. */
const militaryAt = (tokens: readonly Token[], at: number): TimeSpan | null => {
  const found = /^([01]\d|2[0-3])([0-5]\d)$/.exec(word(tokens, at));
  const before = word(tokens, at - 1);
  const isLed = clockLeads.has(before) || (weekdayNamed(before) ?? weekdayShort(before)) !== null;
  if (found === null || !(isLed || found[1]?.startsWith('0'))) return null;
  return { kind: 'time', from: at, to: at + 1, at: `${found[1]}:${found[2]}` };
};

const clockLeads = new Set(['at', 'since', 'until', 'till', 'by', 'from', 'about', 'around', 'gone']);
const minutesPast: ReadonlyMap<string, number> = new Map([
  ['half', 30],
  ['quarter', 15],
]);

/** `half past six`, `quarter to 7`, and `half six` behind a word that calls for a time. */
const pastAt = (tokens: readonly Token[], at: number): TimeSpan | null => {
  const minutes = minutesPast.get(word(tokens, at));
  if (minutes === undefined) return null;
  const turn = word(tokens, at + 1);
  const isBare = minutes === 30 && clockLeads.has(word(tokens, at - 1)) && hourWords.has(turn);
  if (!isBare && !['past', 'to', 'after'].includes(turn)) return null;
  const hourAt = isBare ? at + 1 : at + 2;
  const said = word(tokens, hourAt);
  const hour = /^\d{1,2}$/.test(said) ? Number(said) : [...hourWords].indexOf(said) + 1;
  if (hour < 1 || hour > 12) return null;
  const clock = turn === 'to' ? { hour: hour - 1, minutes: 60 - minutes } : { hour, minutes };
  return { kind: 'time', from: at, to: hourAt + 1, at: `${pad(clock.hour)}:${pad(clock.minutes)}` };
};

const hourWords = new Set('one two three four five six seven eight nine ten eleven twelve'.split(' '));

/** The times of day in a line. An hour beside which nothing says so is left a number. */
export const findTimes = (tokens: readonly Token[], numbers: readonly NumberSpan[]): readonly TimeSpan[] => [
  ...tokens.flatMap((_, at) => clockAt(tokens, at) ?? militaryAt(tokens, at) ?? pastAt(tokens, at) ?? []),
  ...numbers.filter(isHour).flatMap((span) => spokenAt(tokens, span) ?? bareAt(tokens, span) ?? []),
];
