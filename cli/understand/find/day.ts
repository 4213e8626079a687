/** Which days stand in a line, by a closed grammar; each is given as it leans to the past and as it leans to the future. */
import { addDays, type Day, isDay } from '../../../engine/day.ts';
import type { DaySpan } from '../spans.ts';
import type { Token } from '../tokens.ts';
import { weekdayAfter, weekdayBefore, weekdayNamed, weekdayShort } from './calendar.ts';
import { readDate, readSlashed } from './date.ts';
import { readPhrase } from './day-phrase.ts';
import { fixed, type Hit, partsOfDay, prepositions, type Reader, wordAt } from './day-reader.ts';
import { readHoliday } from './holiday.ts';
import { numberAt } from './number.ts';

const readFull: Reader = (tokens, at) => {
  const text = wordAt(tokens, at);
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
  const within = wordAt(tokens, at) === 'in' ? 1 : 0;
  const begin = at + within;
  const one = ['a', 'an', 'another'].includes(wordAt(tokens, begin));
  const number = one ? null : numberAt(tokens, begin);
  const count = one ? 1 : number?.value;
  const unitAt = one ? begin + 1 : number?.to;
  if (count === undefined || unitAt === undefined || !Number.isInteger(count) || Math.abs(count) > 1000)
    return null;
  const step = steps.get(wordAt(tokens, unitAt));
  if (step === undefined) return null;
  const next = wordAt(tokens, unitAt + 1);
  const later = wordAt(tokens, unitAt + 2);
  if (next === 'ago' || next === 'back') return fixed(addDays(today, -count * step), unitAt + 2, false);
  if (next === 'from' && ['now', 'today'].includes(later))
    return fixed(addDays(today, count * step), unitAt + 3, false);
  return within === 1 ? fixed(addDays(today, count * step), unitAt + 1, false) : null;
};

const doubtful = new Set(['sat', 'sun', 'wed']);
/** Behind these it shines or somebody sat. */
const notDays = new Set(
  'the in of no full hot more some hours a direct evening morning it they he she i we you who all just'.split(
    ' ',
  ),
);
const sitters = new Set('birds hen one chicks reds whites them'.split(' '));

const namedAt = (tokens: readonly Token[], at: number): number | null => {
  const full = weekdayNamed(wordAt(tokens, at));
  if (full !== null) return full;
  const short = weekdayShort(wordAt(tokens, at));
  if (short === null) return null;
  const free = !doubtful.has(wordAt(tokens, at));
  const next = tokens[at + 1];
  const last = next === undefined || next.isMark || numberAt(tokens, at + 1) !== null || next.word === 'eve';
  const clear =
    free ||
    prepositions.has(wordAt(tokens, at - 1)) ||
    partsOfDay.has(next?.word ?? '') ||
    // "at the feed store sat for 2.75"
    (next?.word === 'for' && numberAt(tokens, at + 2) !== null) ||
    next?.word === 'night';
  // "the sun", "they sat": behind these it is no day
  const before = wordAt(tokens, at - 1);
  const isSat = wordAt(tokens, at) === 'sat' && sitters.has(before) && next !== undefined;
  return clear || (last && at > 0 && !notDays.has(before) && !isSat) ? short : null;
};

/** `sunday`, `last sunday`, `next fri`, `a week from saturday`, `saturday week`. */
const readWeekday: Reader = (tokens, at, today) => {
  const turn = ['last', 'next', 'this', 'coming'].includes(wordAt(tokens, at)) ? wordAt(tokens, at) : '';
  const nameAt = turn === '' ? at : at + 1;
  const weekday = namedAt(tokens, nameAt);
  if (weekday === null) {
    const from =
      ['from', 'on'].includes(wordAt(tokens, at + 2)) && ['a', 'one', 'two'].includes(wordAt(tokens, at));
    const later = from && ['week', 'weeks'].includes(wordAt(tokens, at + 1)) ? namedAt(tokens, at + 3) : null;
    const away = wordAt(tokens, at) === 'two' ? 14 : 7;
    return later === null ? null : fixed(addDays(weekdayAfter(today, later), away), at + 4, false);
  }
  const to = nameAt + 1;
  if (wordAt(tokens, to) === 'week') return fixed(addDays(weekdayAfter(today, weekday), 7), to + 1, false);
  if (turn === 'last') return fixed(weekdayBefore(addDays(today, -1), weekday), to, false);
  if (turn === 'next' || turn === 'coming') return fixed(weekdayAfter(addDays(today, 1), weekday), to, false);
  return { past: weekdayBefore(today, weekday), future: weekdayAfter(today, weekday), to, plain: false };
};

const readers: readonly Reader[] = [
  readFull,
  readHoliday,
  readPhrase,
  readAway,
  readWeekday,
  readDate,
  readSlashed,
];

const roleAt = (tokens: readonly Token[], at: number): DaySpan['role'] => {
  const before = wordAt(tokens, at - 1) === 'the' ? wordAt(tokens, at - 2) : wordAt(tokens, at - 1);
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
    const tail = partsOfDay.has(wordAt(tokens, hit.to)) ? hit.to + 1 : hit.to;
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
