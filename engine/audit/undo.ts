/** The later of two moments with some causes taken away: what is replayed to prove them. */
import type { Day } from '../day.ts';
import { inForce } from '../rulebook/figures.ts';
import type { Cause, Figure, Moment, Request, Rulebook } from '../types.ts';

/** What a question is worked out over. */
export interface View {
  readonly moment: Moment;
  readonly book: Rulebook;
  /** The day it is seen from, where the day asked about lies ahead of that. */
  readonly asked?: Day | undefined;
  /** What the words are heard to ask, where that may differ between two views. */
  readonly request?: Request | undefined;
}

/** A rulebook in which some figures still have the value of an earlier day. */
const holdBack = (book: Rulebook, ids: readonly string[], on: Day): Rulebook => {
  const held = ids.flatMap((id): Figure[] => {
    const figure = book.figures[id];
    return figure === undefined ? [] : [{ ...figure, values: [inForce(figure, on)] }];
  });
  if (held.length === 0) return book;
  return {
    ...book,
    figures: { ...book.figures, ...Object.fromEntries(held.map((each) => [each.id, each])) },
  };
};

/**
 * The view of now without these causes: their lines left out, their figures at the value they had, the rules of then, the
 * day of then, what the words were heard as. Entries about a day that has then not come yet wait, as they always do.
 */
export const undoCauses = (now: View, then: View, causes: readonly Cause[]): View => {
  const lines = causes.flatMap((cause) => (cause.kind === 'entry' ? [cause.line] : []));
  const figures = causes.flatMap((cause) => (cause.kind === 'figure' ? [cause.figure] : []));
  const has = (kind: Cause['kind']): boolean => causes.some((cause) => cause.kind === kind);
  const request = has('heard') ? then.request : now.request;
  return {
    request,
    asked: has('days') ? then.asked : (request ?? now).asked,
    moment: {
      ...now.moment,
      on: has('days') ? then.moment.on : (request ?? now).moment.on,
      without: [...(now.moment.without ?? []), ...lines],
    },
    book: holdBack(has('rules') ? then.book : now.book, figures, then.moment.on),
  };
};
