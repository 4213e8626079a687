/** Which runs of days stand in a line: `this week`, `the next 10 days`, `for a week`. */
import { addDays, type Day, weekdayOf } from '../../../engine/day.ts';
import type { StretchSpan } from '../spans.ts';
import type { Token } from '../tokens.ts';
import { weekdayAfter } from './calendar.ts';
import { numberAt } from './number.ts';

const unitDays = new Map([
  ['day', 1],
  ['days', 1],
  ['night', 1],
  ['nights', 1],
  ['week', 7],
  ['weeks', 7],
  ['wk', 7],
  ['wks', 7],
  ['fortnight', 14],
  ['month', 30],
  ['months', 30],
]);

const leads = new Set(['next', 'coming', 'following', 'for', 'over', 'another', 'lasts', 'last']);
const saturday = 6;
const monday = 1;

const word = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';
const run = (from: number, to: number, first: Day, days: number): StretchSpan => ({
  kind: 'stretch',
  from,
  to,
  first,
  last: addDays(first, days - 1),
  days,
});

const readNamed = (tokens: readonly Token[], at: number, today: Day): StretchSpan | null => {
  const lead = word(tokens, at);
  const thing = word(tokens, at + 1);
  if (['the', 'this', 'next', 'coming'].includes(lead) && thing === 'weekend') {
    const begin = weekdayOf(today) === 0 ? addDays(today, -1) : weekdayAfter(today, saturday);
    return run(at, at + 2, lead === 'next' && begin <= today ? addDays(begin, 7) : begin, 2);
  }
  if (
    lead === 'rest' &&
    thing === 'of' &&
    ['the', 'this'].includes(word(tokens, at + 2)) &&
    word(tokens, at + 3) === 'week'
  ) {
    return run(at, at + 4, today, ((7 - weekdayOf(today)) % 7) + 1);
  }
  if (thing === 'week' && lead === 'next') return run(at, at + 2, weekdayAfter(addDays(today, 1), monday), 7);
  if (thing === 'week' && ['this', 'coming'].includes(lead)) return run(at, at + 2, today, 7);
  if (thing === 'month' && ['this', 'next', 'coming'].includes(lead)) return run(at, at + 2, today, 30);
  return null;
};

/** `next 10 days`, `for 3 weeks`, `a week` after `for`, `10 days worth`. */
const readCounted = (tokens: readonly Token[], at: number, today: Day): StretchSpan | null => {
  const number = numberAt(tokens, at);
  const one = ['a', 'one'].includes(word(tokens, at)) && unitDays.has(word(tokens, at + 1));
  const count = one ? 1 : number?.value;
  const unitAt = one ? at + 1 : number?.to;
  if (count === undefined || unitAt === undefined || count <= 0 || count > 1000) return null;
  const days = unitDays.get(word(tokens, unitAt));
  const led = leads.has(word(tokens, at - 1));
  const worth = ['worth', 'supply'].includes(word(tokens, unitAt + 1));
  const isAge = ['old', 'of'].includes(word(tokens, unitAt + 1)) && !worth;
  if (days === undefined || isAge || !(led || worth)) return null;
  return run(at, unitAt + 1, today, Math.max(1, Math.round(count * days)));
};

/** The runs of days named in a line; all begin today unless they say otherwise. */
export const findStretches = (tokens: readonly Token[], today: Day): readonly StretchSpan[] =>
  tokens.flatMap((_, at) => readNamed(tokens, at, today) ?? readCounted(tokens, at, today) ?? []);
