/** What of the processing day a question is about. */
import { defineFact } from '../define.ts';
import { onlyAsked } from '../told.ts';

/** By what the words say; the first that they say counts. */
const topics = [
  ['asks-scald', 'scalding'],
  ['asks-ice', 'ice'],
  ['asks-pace', 'pace'],
  ['asks-gear', 'gear'],
] as const;

export const askedFacts = [
  ...topics.map(([fact]) => onlyAsked(fact, null, 'no')),
  defineFact({
    id: 'process-asked',
    unit: null,
    per: 'flock',
    needs: topics.map(([fact]) => fact),
    // Without any of these it is the clock of the whole day.
    compute: (read) => topics.find(([fact]) => read.text(fact) === 'yes')?.[1] ?? 'clock',
  }),
];
