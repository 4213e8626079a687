/** Every turn of a yes-or-no answer from one morning of a season to the next, and whether its decisive cause holds up. */
import { addDays } from '../../engine/day.ts';
import type { Engine } from '../../engine/index.ts';
import type { Answer, Cause, Moment, Value } from '../../engine/types.ts';

export interface Flip {
  readonly on: string;
  readonly question: string;
  readonly group: string | null;
  readonly from: Value | null;
  readonly to: Value | null;
  readonly causes: readonly Cause[];
  /** Whether there is one cause, and the plain question without it has the answer of the day before. */
  readonly isUndone: boolean;
}

const verdictOf = (answer: Answer, group: string | null): string | null =>
  answer.parts.find((part) => part.group === group)?.verdict ?? null;

/** The later morning with one cause gone, put together here by hand and not by the code that found the cause. */
const without = (cause: Cause, then: Moment, now: Moment): Moment | null => {
  if (cause.kind === 'days') return { ...now, on: then.on };
  return cause.kind === 'entry' ? { ...now, without: [cause.line] } : null;
};

/** Goes through all mornings, each as it was known before the round of the day was done. */
export const flipsIn = async (engine: Engine, first: string, days: number): Promise<readonly Flip[]> => {
  const written = engine.lines.map((line): string => JSON.parse(line).written);
  const morningOf = (day: number): Moment => {
    const on = addDays(first, day);
    return { on, asOf: null, lines: written.filter((at) => at < `${on}T07:30`).length };
  };
  const questions = Object.values(engine.book.questions).filter(({ kind }) => kind === 'yes-no');
  const audit = engine.audit(null);
  const flips: Flip[] = [];
  for (let day = 1; day < days; day += 1) {
    const [then, now] = [morningOf(day - 1), morningOf(day)];
    for (const { id: question } of questions) {
      const request = { question, groups: [], moment: now, until: null, supposing: [] };
      const wanted = { withDays: false, counts: ({ what }: { readonly what: string }) => what === 'verdict' };
      const { differences } = await audit.compare(request, { moment: then, advice: null }, wanted);
      for (const { group, from, to, causes } of differences) {
        const [cause] = causes;
        const moment = cause === undefined || causes.length > 1 ? null : without(cause, then, now);
        const isUndone =
          moment !== null && verdictOf(await engine.ask({ ...request, moment }), group) === from;
        flips.push({ on: now.on, question, group, from, to, causes, isUndone });
      }
    }
  }
  return flips;
};
