/** How far ahead an answer is looked for. */
import { defineFact } from './define.ts';

export const searchFacts = [
  defineFact({
    id: 'look-ahead',
    unit: 'day',
    per: 'flock',
    figures: ['search/look-ahead'],
    compute: (read) => read.figure('search/look-ahead'),
  }),
];
