/** The key dates of a flock as the text of an iCalendar file. */
import type { StepToDo } from '../../engine/types.ts';
import { stepsOf } from '../say/answer.ts';
import { clean } from '../say/clean.ts';
import { type CalendarEvent, sayCalendar } from '../say/icalendar.ts';
import { capital, phrase } from '../say/phrase.ts';
import { saySource } from '../say/source.ts';
import type { Speech } from '../say/speech.ts';
import { type Flock, momentOn, speechFor } from './flock.ts';

/** The question whose dated steps are the entries. */
const question = 'key-dates';
const minutesInDay = 24 * 60;

const eventOf = (speech: Speech, step: StepToDo): readonly CalendarEvent[] => {
  const rule = speech.book.rules[step.rule];
  if (step.by === null || rule === undefined) return [];
  return [
    {
      id: `${encodeURIComponent(step.group ?? 'flock')}.${step.rule.replace('/', '.')}@penside`,
      summary: clean(capital(phrase(speech, step.says))),
      description: `${capital(rule.whyRight)}. Rule ${rule.id}: ${saySource(speech, rule.source)}.`,
      at: step.by,
      remind: step.remind === null ? null : step.remind * minutesInDay,
    },
  ];
};

export interface Calendar {
  readonly text: string;
  readonly events: readonly CalendarEvent[];
  readonly dates: number;
}

/**
 * The dates to come, as the single answer gives them.
 * @param groups names; none for all groups
 * @param made when the file is made, UTC, `2026-05-14T10:00:00.000Z`
 */
export const calendarOf = async (
  flock: Flock,
  groups: readonly string[],
  made: string,
): Promise<Calendar> => {
  const moment = momentOn(flock, flock.today);
  const answer = await flock.engine().ask({ question, groups, moment, until: null, supposing: [] });
  const speech = speechFor(flock);
  const events = stepsOf(answer.parts).flatMap((step) => eventOf(speech, step));
  // Dates move only with the ledger, and the ledger only grows.
  const sequence = flock.engine().state(moment).lines;
  return { text: sayCalendar(events, { made, sequence }), events, dates: events.length };
};
