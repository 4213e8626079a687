/** Days by their date: `3 may`, `the 3rd`, `5/14`. */
import type { Day } from '../../../engine/day.ts';
import type { Token } from '../tokens.ts';
import { dateInMonth, dateNear, dayOf, monthNamed } from './calendar.ts';
import { fixed, type Hit, prepositions, type Reader, wordAt } from './day-reader.ts';

const ordinalWords = 'first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ');
const dateAt = (tokens: readonly Token[], at: number): { date: number; ordinal: boolean } | null => {
  const found = /^(\d{1,2})(st|nd|rd|th)?$/.exec(wordAt(tokens, at));
  if (found !== null) return { date: Number(found[1]), ordinal: found[2] !== undefined };
  const named = ordinalWords.indexOf(wordAt(tokens, at));
  return named < 0 ? null : { date: named + 1, ordinal: true };
};

const withYear = (
  tokens: readonly Token[],
  at: number,
  today: Day,
  month: number,
  date: number,
): Hit | null => {
  const comma = wordAt(tokens, at) === ',' ? 1 : 0;
  const year = /^(?:19|20)\d\d$/.exec(wordAt(tokens, at + comma));
  if (year !== null) {
    const day = dayOf(Number(year[0]), month, date);
    return day === null ? null : fixed(day, at + comma + 1);
  }
  const near = dateNear(today, month, date);
  return near === null ? null : { ...near, to: at, plain: false };
};

const behindDate = new Set(
  'and but we i they it he she a the my our with for in at of to from after before was were all three two one four five'.split(
    ' ',
  ),
);

const endsDate = (token: Token | undefined): boolean =>
  token === undefined || token.isMark || behindDate.has(token.word);

/** `3 may`, `the 3rd of may`, `may 3rd`, `14 june 2026`, `the 3rd`. */
export const readDate: Reader = (tokens, at, today) => {
  const month = monthNamed(wordAt(tokens, at));
  if (month !== null) {
    const the = wordAt(tokens, at + 1) === 'the' ? 2 : 1;
    const after = dateAt(tokens, at + the);
    const isMeasure = tokens[at + the + 1]?.word === 'x' || tokens[at + the + 1]?.word === '.';
    return after === null || isMeasure ? null : withYear(tokens, at + the + 1, today, month, after.date);
  }
  const the = wordAt(tokens, at) === 'the' ? 1 : 0;
  const first = dateAt(tokens, at + the);
  if (first === null) return null;
  const of = wordAt(tokens, at + the + 1) === 'of' ? 1 : 0;
  const named = monthNamed(wordAt(tokens, at + the + 1 + of));
  if (named !== null) return withYear(tokens, at + the + of + 2, today, named, first.date);
  const digits = /^\d/.test(wordAt(tokens, at + the));
  const led = prepositions.has(wordAt(tokens, at - 1));
  if (!first.ordinal || (the === 0 && !(digits && led)) || !(digits || led)) return null;
  // "the second strip", "the first time": an ordinal in front of what it counts is no date
  if (!digits && !endsDate(tokens[at + the + 1])) return null;
  const near = dateInMonth(today, first.date);
  return near === null ? null : { ...near, to: at + the + 1, plain: false };
};

/** `1/2`, `3/4` and the like are parts, unless a word calls for a date. */
const isPart = (above: number, below: number): boolean =>
  above < below && [2, 3, 4, 5, 6, 8, 10, 16].includes(below);

/** `5/14`, unless it is a part; behind a word that calls for a date or with a year, always. Day first where the place is metric. */
export const readSlashed: Reader = (tokens, at, today, dayFirst) => {
  const found = /^(\d{1,2})\/(\d{1,2})(?:\/(\d{2}|\d{4}))?$/.exec(wordAt(tokens, at));
  if (found === null) return null;
  const [one, other] = [Number(found[1]), Number(found[2])];
  const isCalledFor = found[3] !== undefined || prepositions.has(wordAt(tokens, at - 1));
  const isSide = [at - 1, at + 1].some((beside) => ['by', 'x'].includes(wordAt(tokens, beside)));
  if (!isCalledFor && (isPart(one, other) || isSide)) return null;
  const [month, date] = dayFirst ? [other, one] : [one, other];
  if (found[3] !== undefined) {
    const day = dayOf(found[3].length === 2 ? 2000 + Number(found[3]) : Number(found[3]), month, date);
    return day === null ? null : fixed(day, at + 1);
  }
  const near = dateNear(today, month, date);
  return near === null ? null : { ...near, to: at + 1, plain: false };
};
