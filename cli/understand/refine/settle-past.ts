/** Which run of days a line means that looks back: `between 1 and 15 June`, `last week`, `since sunday`, `in april`, `yesterday`. */
import { addDays, type Day, weekdayOf } from '../../../engine/day.ts';
import { type Line, wordsUnder } from '../find/all.ts';
import { dayOf, monthNamed, nameDay } from '../find/calendar.ts';
import { numberAt } from '../find/number.ts';
import { type DaySpan, spansOf } from '../spans.ts';
import type { Token } from '../tokens.ts';

/** First and last day, both included; `plain` when no reckoning was needed to find them. */
export interface PastRun {
  readonly from: Day;
  readonly to: Day;
  readonly said: string;
  readonly plain: boolean;
}

const month = 30;
const leads = new Set(['between', 'from', 'since']);
const word = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';
const inOrder = (one: Day, other: Day): readonly [Day, Day] => (one <= other ? [one, other] : [other, one]);

/** `between 1 and 15 june`, `from 1 to 15 june`, where the month is said once: the latest such run that has begun. */
const sharedMonth = (tokens: readonly Token[], last: DaySpan, today: Day): readonly [Day, Day] | null => {
  const joint = last.from - 1;
  if (!['and', 'to', 'till', 'until', 'through', '-'].includes(word(tokens, joint))) return null;
  const number = numberAt(tokens, joint - 1);
  if (number === null || number.to !== joint) return null;
  const runs = [last.future, last.past].map((end): readonly [Day | null, Day] => {
    const [year = 0, monthOf = 0] = end.split('-').map(Number);
    return [dayOf(year, monthOf, number.value), end];
  });
  const run = runs.find(([begin]) => begin !== null && begin <= today);
  return run?.[0] == null ? null : inOrder(run[0], run[1]);
};

/** The end of a run that begins on a day: the first such date from there on. */
const endAfter = (begin: Day, { past, future }: DaySpan): Day => (past >= begin ? past : future);

/** The week, Monday to Sunday, that is so many weeks back. */
const weekBack = (today: Day, weeks: number): readonly [Day, Day] => {
  const monday = addDays(today, -((weekdayOf(today) + 6) % 7) - 7 * weeks);
  return [monday, addDays(monday, 6)];
};

const unitDays = new Map([
  ['day', 1],
  ['days', 1],
  ['night', 1],
  ['nights', 1],
  ['week', 7],
  ['weeks', 7],
  ['month', month],
  ['months', month],
]);

/** `last week`, `this week`, `last 10 days`, `in april`, with the tokens they stand on. */
const namedRun = (tokens: readonly Token[], at: number, today: Day): [Day, Day, number] | null => {
  const [lead, next] = [word(tokens, at), word(tokens, at + 1)];
  if (next === 'week' && lead === 'last') return [...weekBack(today, 1), at + 2];
  if (next === 'week' && lead === 'this') return [weekBack(today, 0)[0], today, at + 2];
  if (next === 'month' && ['last', 'this'].includes(lead)) return [addDays(today, 1 - month), today, at + 2];
  if (['last', 'past'].includes(lead)) {
    const count = numberAt(tokens, at + 1);
    const days = count === null ? undefined : unitDays.get(word(tokens, count.to));
    if (count !== null && days !== undefined && count.value >= 1)
      return [addDays(today, 1 - Math.round(count.value * days)), today, count.to + 1];
  }
  const named = ['in', 'during', 'of', 'for'].includes(lead) ? monthNamed(next) : null;
  if (named === null) return null;
  const thisYear = Number(today.slice(0, 4));
  const first = dayOf(thisYear, named, 1) ?? today;
  const begin = first <= today ? first : (dayOf(thisYear - 1, named, 1) ?? today);
  const after = addDays(begin, 31);
  return [begin, addDays(`${after.slice(0, 7)}-01`, -1), at + 2];
};

/** The run of days that a line looking back names, never past today; null when it names none. */
export const settlePast = (words: string, line: Line, today: Day): PastRun | null => {
  const { tokens } = line;
  const run = (from: Day, to: Day, at: number, end: number, plain: boolean): PastRun | null => {
    if (from > today) return null;
    const begin = leads.has(word(tokens, at - 1)) ? at - 1 : at;
    return { from, to: to > today ? today : to, said: wordsUnder(words, tokens, begin, end), plain };
  };
  const [first, second] = spansOf(line.spans, 'day');
  if (first !== undefined && second !== undefined) {
    return run(first.past, endAfter(first.past, second), first.from, second.to, first.plain && second.plain);
  }
  if (first?.role === 'since') return run(first.past, today, first.from, first.to, first.plain);
  if (first !== undefined) {
    const shared = sharedMonth(tokens, first, today);
    return shared === null
      ? run(first.past, first.past, first.from, first.to, first.plain)
      : run(...shared, first.from - 2, first.to, false);
  }
  for (const at of tokens.keys()) {
    const named = namedRun(tokens, at, today);
    if (named !== null) return run(named[0], named[1], at, named[2], false);
  }
  return null;
};

/** What was taken for granted in reckoning it. */
export const sayPast = ({ from, to, said, plain }: PastRun): readonly string[] =>
  plain ? [] : [`taking ${said} as ${from === to ? nameDay(from) : `${nameDay(from)} to ${nameDay(to)}`}`];
