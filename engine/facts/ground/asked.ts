/** What a question about the ground is after, supposed for that one answer. */
import { onlyAsked } from '../told.ts';

export const askedFacts = [
  // Strips are numbered from 1; none was named.
  onlyAsked('strip-asked', null, 0),
  onlyAsked('asks-moves-left', null, 'no'),
  onlyAsked('asks-where', null, 'no'),
  onlyAsked('asks-nitrogen', null, 'no'),
  onlyAsked('asks-rest', null, 'no'),
];
