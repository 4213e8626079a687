/** Which days stand in a line, by a closed grammar; each is given as it leans to the past and as it leans to the future. */
import { addDays, type Day, isDay } from '../../../engine/day.ts';
import type { DaySpan } from '../spans.ts';
import type { Token } from '../tokens.ts';
import {
  dateInMonth,
  dateNear,
  dayOf,
  monthNamed,
  weekdayAfter,
  weekdayBefore,
  weekdayNamed,
  weekdayShort,
} from './calendar.ts';
import { numberAt } from './number.ts';

interface Hit {
  readonly past: Day;
  readonly future: Day;
  readonly to: number;
  readonly plain: boolean;
}

type Reader = (tokens: readonly Token[], at: number, today: Day, dayFirst: boolean) => Hit | null;

const word = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';
const fixed = (day: Day, to: number, plain = true): Hit => ({ past: day, future: day, to, plain });

const partsOfDay = new Set([
  'morning',
  'afternoon',
  'evening',
  'night',
  'noon',
  'lunchtime',
  'am',
  'pm',
  'dawn',
  'dusk',
]);
const prepositions = new Set([
  'on',
  'by',
  'since',
  'until',
  'till',
  'next',
  'last',
  'this',
  'from',
  'through',
  'for',
  'before',
  'after',
  'every',
  'to',
  'come',
]);

/** Phrases that are always the same number of days away. A night belongs to the day on which it begins. */
const away: Readonly<Record<string, number>> = {
  'the day before yesterday': -2,
  'day before yesterday': -2,
  'the night before last': -2,
  'night before last': -2,
  'the day after tomorrow': 2,
  'day after tomorrow': 2,
  overmorrow: 2,
  'this time next week': 7,
  'a week ago': -7,
  'a week from today': 7,
  'a week from now': 7,
  'a week today': 7,
  'last night': -1,
  yesterday: -1,
  overnight: -1,
  tomorrow: 1,
  tonight: 0,
  'this morning': 0,
  'this afternoon': 0,
  'this evening': 0,
  'this am': 0,
  'this pm': 0,
  today: 0,
  'just now': 0,
  'right now': 0,
  'at the moment': 0,
  now: 0,
};

/** The same by first word, longest first. */
const phrases: ReadonlyMap<string, readonly { words: readonly string[]; days: number }[]> = Object.entries(
  away,
)
  .map(([phrase, days]) => ({ words: phrase.split(' '), days }))
  .sort((one, other) => other.words.length - one.words.length)
  .reduce((byFirst, phrase) => {
    const first = phrase.words[0] ?? '';
    return byFirst.set(first, [...(byFirst.get(first) ?? []), phrase]);
  }, new Map<string, { words: readonly string[]; days: number }[]>());

const readPhrase: Reader = (tokens, at, today) => {
  const found = phrases
    .get(word(tokens, at))
    ?.find((phrase) => phrase.words.every((each, n) => tokens[at + n]?.word === each));
  return found === undefined ? null : fixed(addDays(today, found.days), at + found.words.length);
};

const readFull: Reader = (tokens, at) => {
  const text = word(tokens, at);
  return isDay(text) ? fixed(text, at + 1) : null;
};

const steps = new Map([
  ['day', 1],
  ['days', 1],
  ['night', 1],
  ['nights', 1],
  ['week', 7],
  ['weeks', 7],
  ['wk', 7],
  ['wks', 7],
  ['fortnight', 14],
]);

/** `3 days ago`, `in 2 weeks`, `10 days from now`, `in a week`. */
const readAway: Reader = (tokens, at, today) => {
  const within = word(tokens, at) === 'in' ? 1 : 0;
  const begin = at + within;
  const one = ['a', 'an', 'another'].includes(word(tokens, begin));
  const number = one ? null : numberAt(tokens, begin);
  const count = one ? 1 : number?.value;
  const unitAt = one ? begin + 1 : number?.to;
  if (count === undefined || unitAt === undefined || !Number.isInteger(count) || Math.abs(count) > 1000)
    return null;
  const step = steps.get(word(tokens, unitAt));
  if (step === undefined) return null;
  const next = word(tokens, unitAt + 1);
  const later = word(tokens, unitAt + 2);
  if (next === 'ago' || next === 'back') return fixed(addDays(today, -count * step), unitAt + 2, false);
  if (next === 'from' && ['now', 'today'].includes(later))
    return fixed(addDays(today, count * step), unitAt + 3, false);
  return within === 1 ? fixed(addDays(today, count * step), unitAt + 1, false) : null;
};

const namedAt = (tokens: readonly Token[], at: number): number | null => {
  const full = weekdayNamed(word(tokens, at));
  if (full !== null) return full;
  const short = weekdayShort(word(tokens, at));
  if (short === null) return null;
  const free = !['sat', 'sun', 'wed'].includes(word(tokens, at));
  const last = tokens[at + 1] === undefined || tokens[at + 1]?.isMark === true;
  const clear = free || prepositions.has(word(tokens, at - 1)) || partsOfDay.has(word(tokens, at + 1));
  return clear || (last && at > 1 && !['the', 'they', 'a', 'birds'].includes(word(tokens, at - 1)))
    ? short
    : null;
};

/** `sunday`, `last sunday`, `next fri`, `a week from saturday`, `saturday week`. */
const readWeekday: Reader = (tokens, at, today) => {
  const turn = ['last', 'next', 'this', 'coming'].includes(word(tokens, at)) ? word(tokens, at) : '';
  const nameAt = turn === '' ? at : at + 1;
  const weekday = namedAt(tokens, nameAt);
  if (weekday === null) {
    const from =
      ['from', 'on'].includes(word(tokens, at + 2)) && ['a', 'one', 'two'].includes(word(tokens, at));
    const later = from && ['week', 'weeks'].includes(word(tokens, at + 1)) ? namedAt(tokens, at + 3) : null;
    const away = word(tokens, at) === 'two' ? 14 : 7;
    return later === null ? null : fixed(addDays(weekdayAfter(today, later), away), at + 4, false);
  }
  const to = nameAt + 1;
  if (word(tokens, to) === 'week') return fixed(addDays(weekdayAfter(today, weekday), 7), to + 1, false);
  if (turn === 'last') return fixed(weekdayBefore(addDays(today, -1), weekday), to, false);
  if (turn === 'next' || turn === 'coming') return fixed(weekdayAfter(addDays(today, 1), weekday), to, false);
  return { past: weekdayBefore(today, weekday), future: weekdayAfter(today, weekday), to, plain: false };
};

const ordinalWords = 'first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ');
const dateAt = (tokens: readonly Token[], at: number): { date: number; ordinal: boolean } | null => {
  const found = /^(\d{1,2})(st|nd|rd|th)?$/.exec(word(tokens, at));
  if (found !== null) return { date: Number(found[1]), ordinal: found[2] !== undefined };
  const named = ordinalWords.indexOf(word(tokens, at));
  return named < 0 ? null : { date: named + 1, ordinal: true };
};

const withYear = (
  tokens: readonly Token[],
  at: number,
  today: Day,
  month: number,
  date: number,
): Hit | null => {
  const comma = word(tokens, at) === ',' ? 1 : 0;
  const year = /^(?:19|20)\d\d$/.exec(word(tokens, at + comma));
  if (year !== null) {
    const day = dayOf(Number(year[0]), month, date);
    return day === null ? null : fixed(day, at + comma + 1);
  }
  const near = dateNear(today, month, date);
  return near === null ? null : { ...near, to: at, plain: false };
};

/** `3 may`, `the 3rd of may`, `may 3rd`, `14 june 2026`, `the 3rd`. */
const readDate: Reader = (tokens, at, today) => {
  const month = monthNamed(word(tokens, at));
  if (month !== null) {
    const the = word(tokens, at + 1) === 'the' ? 2 : 1;
    const after = dateAt(tokens, at + the);
    const isMeasure = tokens[at + the + 1]?.word === 'x' || tokens[at + the + 1]?.word === '.';
    return after === null || isMeasure ? null : withYear(tokens, at + the + 1, today, month, after.date);
  }
  const the = word(tokens, at) === 'the' ? 1 : 0;
  const first = dateAt(tokens, at + the);
  if (first === null) return null;
  const of = word(tokens, at + the + 1) === 'of' ? 1 : 0;
  const named = monthNamed(word(tokens, at + the + 1 + of));
  if (named !== null) return withYear(tokens, at + the + of + 2, today, named, first.date);
  const digits = /^\d/.test(word(tokens, at + the));
  const led = prepositions.has(word(tokens, at - 1));
  if (!first.ordinal || the === 0 || !(digits || led)) return null;
  const near = dateInMonth(today, first.date);
  return near === null ? null : { ...near, to: at + 2, plain: false };
};

/** `5/14` after a word that calls for a date, or with a year. Day first where the place is metric. */
const readSlashed: Reader = (tokens, at, today, dayFirst) => {
  const found = /^(\d{1,2})\/(\d{1,2})(?:\/(\d{2}|\d{4}))?$/.exec(word(tokens, at));
  if (found === null || (found[3] === undefined && !prepositions.has(word(tokens, at - 1)))) return null;
  const [one, other] = [Number(found[1]), Number(found[2])];
  const [month, date] = dayFirst ? [other, one] : [one, other];
  if (found[3] !== undefined) {
    const day = dayOf(found[3].length === 2 ? 2000 + Number(found[3]) : Number(found[3]), month, date);
    return day === null ? null : fixed(day, at + 1);
  }
  const near = dateNear(today, month, date);
  return near === null ? null : { ...near, to: at + 1, plain: false };
};

const readers: readonly Reader[] = [readFull, readPhrase, readAway, readWeekday, readDate, readSlashed];

const roleAt = (tokens: readonly Token[], at: number): DaySpan['role'] => {
  const before = word(tokens, at - 1) === 'the' ? word(tokens, at - 2) : word(tokens, at - 1);
  if (['until', 'till', 'through', 'to'].includes(before)) return 'until';
  return before === 'since' ? 'since' : 'on';
};

/** The days named in a line. `dayFirst` says how `5/6` is read. */
export const findDays = (tokens: readonly Token[], today: Day, dayFirst: boolean): readonly DaySpan[] => {
  const found: DaySpan[] = [];
  let at = 0;
  while (at < tokens.length) {
    const begin = at;
    const hit = readers.reduce<Hit | null>(
      (done, read) => done ?? read(tokens, begin, today, dayFirst),
      null,
    );
    if (hit === null) {
      at += 1;
      continue;
    }
    const tail = partsOfDay.has(word(tokens, hit.to)) ? hit.to + 1 : hit.to;
    found.push({
      kind: 'day',
      from: begin,
      to: tail,
      past: hit.past,
      future: hit.future,
      plain: hit.plain,
      role: roleAt(tokens, begin),
    });
    at = tail;
  }
  return found;
};
