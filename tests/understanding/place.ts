/** The place on which labelled lines are heard: whites on grass, reds in the brooder, in the middle of May. */
import type { About } from '../../cli/understand/types.ts';
import type { Rulebook } from '../../engine/types.ts';

export const placeFor = (book: Rulebook): About => ({
  today: '2026-05-14',
  groups: [
    { name: 'whites', kind: 'fast', place: 'pen', hatched: '2026-04-07', alive: 48 },
    { name: 'reds', kind: 'slow', place: 'brooder', hatched: '2026-04-21', alive: 30 },
  ],
  system: 'us',
  measures: { bag: { kg: 22.6796185, stated: false }, scoop: { kg: 1.36077711, stated: true } },
  before: null,
  asking: null,
  book,
});
