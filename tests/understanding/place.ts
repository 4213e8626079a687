/** The place on which labelled lines are heard. */
import { spokenAt } from '../../cli/understand/learn/spoken.ts';
import type { About } from '../../cli/understand/types.ts';
import type { Rulebook } from '../../engine/types.ts';

export const placeFor = (book: Rulebook): About => ({
  ...spokenAt,
  measures: { bag: { kg: 22.6796185, stated: false }, scoop: { kg: 1.36077711, stated: true } },
  before: null,
  asking: null,
  book,
});
