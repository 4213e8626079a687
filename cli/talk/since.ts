/** Which earlier moment "what changed" means: a day, a line, an answer's reference, or the last time it was answered. */
import { addDays, type Day, isDay } from '../../engine/day.ts';
import type { Since } from '../../engine/index.ts';
import type { Advice, Answer, Request } from '../../engine/types.ts';
import { sayValue } from '../say/quantity.ts';
import type { Speech } from '../say/speech.ts';
import type { Reading } from '../understand/types.ts';

/** What the keeper named to compare with. */
export type Mark =
  | {
      readonly kind: 'ref';
      readonly ref: string;
      readonly lines: number;
      readonly rules: string;
      readonly on: Day;
    }
  | { readonly kind: 'line'; readonly line: number }
  /** Days that were named, the likeliest first. */
  | { readonly kind: 'days'; readonly days: readonly Day[] }
  | { readonly kind: 'last' };

/** A reference as every answer carries it: lines, hash of the rules, day. */
const refIn = (words: string): Mark | null => {
  const found = /\b(\d+)-([0-9a-f]{8,64})-(\d{4}-\d{2}-\d{2})\b/.exec(words.toLowerCase());
  if (found === null) return null;
  const [ref, lines = '', rules = '', on = ''] = found;
  return isDay(on) ? { kind: 'ref', ref, lines: Number(lines), rules, on } : null;
};

/**
 * The mark that a line names. Where it names two days, as in "you said saturday on monday", either may be the one on which
 * it was said: the later that has been comes first, since what was said then was about a day still to come.
 */
export const markIn = (words: string, reading: Reading, today: Day): Mark => {
  const ref = refIn(words);
  if (ref !== null) return ref;
  const n = Number(reading.slots.n);
  if (Number.isInteger(n) && n > 0 && /\blines?\b/i.test(words)) return { kind: 'line', line: n };
  const named = [...new Set([reading.until, reading.on])].filter((day): day is Day => day !== null);
  const past = named.filter((day) => day < today);
  return past.length === 0 ? { kind: 'last' } : { kind: 'days', days: past };
};

/** The day on which a line of the file was written, as far as it says; null for a line that is not there or says nothing. */
export const dayOfLine = (lines: readonly string[], line: number): Day | null => {
  try {
    const { written, on } = JSON.parse(lines[line - 1] ?? '') as Record<string, unknown>;
    const day = typeof written === 'string' ? written.slice(0, 10) : on;
    return typeof day === 'string' && isDay(day) ? day : null;
  } catch {
    return null;
  }
};

const dayOf = (advice: Advice): Day => advice.at.slice(0, 10);

/** Advice whose numbers or days are spoken of: "you said 212 lb", "you said saturday". */
const isQuoted = (speech: Speech, advice: Advice, reading: Reading, days: readonly (Day | null)[]): boolean =>
  advice.results.some(({ value, unit, fact }) => {
    if (unit === 'date') return days.includes(String(value));
    const n = reading.slots.n ?? reading.slots.amount;
    return n !== undefined && sayValue(speech, { value, unit }, fact).split(' ')[0] === String(n);
  });

/** The advice that the line speaks of, on a day: what is quoted, else on the question asked last, else none. */
export const adviceMeant = (
  speech: Speech,
  log: readonly Advice[],
  reading: Reading,
  day: Day,
  question: string | null,
): Advice | null => {
  const given = log.filter((each) => dayOf(each) === day);
  // A day quoted may lie before or after the one on which it was said.
  const others = [reading.on, reading.until].filter((each) => each !== day);
  const weekLater = others.map((each) => (each === null ? null : addDays(each, 7)));
  return (
    given.findLast((each) => isQuoted(speech, each, reading, [...others, ...weekLater])) ??
    given.findLast((each) => each.request.question === question) ??
    null
  );
};

/** The last time that a question was answered from less, or by other rules, than it is now. */
export const lastAdvice = (log: readonly Advice[], answer: Answer): Advice | null =>
  log.findLast(
    (each) =>
      each.request.question === answer.question &&
      each.ref !== answer.ref &&
      JSON.stringify([each.request.groups, each.request.supposing]) ===
        JSON.stringify([answer.request.groups, answer.request.supposing]),
  ) ?? null;

/** A day as it was known when it ended. */
export const endOf = (on: Day): Since => ({ moment: { on, asOf: on, lines: null }, advice: null });

/** The moment at which advice was given, with that advice. */
export const momentOf = (advice: Advice): Since => ({ moment: advice.request.moment, advice });

/**
 * The request of advice once more, today: about the day that it is now, if it was about the day on which it was asked; about
 * the same day, if it was about another. A span that has run out by then is the usual one again.
 */
export const askedAgain = ({ request, at }: Advice, today: Day, asOf: Day | null): Request => {
  const isOfItsDay = request.moment.on === at.slice(0, 10);
  const on = isOfItsDay ? today : request.moment.on;
  const isOver = isOfItsDay && request.until !== null && request.until < today;
  const asked = on > today ? today : undefined;
  return { ...request, moment: { on, asOf, lines: null }, asked, until: isOver ? null : request.until };
};
