/** The later of two moments with some causes taken away: what is replayed to prove them. */
import type { Day } from '../day.ts';
import { inForce } from '../rulebook/figures.ts';
import type { Cause, Figure, Moment, Rulebook } from '../types.ts';

/** What a question is worked out over. */
export interface View {
  readonly moment: Moment;
  readonly book: Rulebook;
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
 * day of then. Entries about a day that has then not come yet wait, as they always do.
 */
export const undoCauses = (now: View, then: View, causes: readonly Cause[]): View => {
  const lines = causes.flatMap((cause) => (cause.kind === 'entry' ? [cause.line] : []));
  const figures = causes.flatMap((cause) => (cause.kind === 'figure' ? [cause.figure] : []));
  const has = (kind: Cause['kind']): boolean => causes.some((cause) => cause.kind === kind);
  return {
    moment: {
      ...now.moment,
      on: has('days') ? then.moment.on : now.moment.on,
      without: [...(now.moment.without ?? []), ...lines],
    },
    book: holdBack(has('rules') ? then.book : now.book, figures, then.moment.on),
  };
};
