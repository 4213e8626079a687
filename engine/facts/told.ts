/** What the words of a question say was seen, supposed for that one answer; nothing where they say nothing. */
import { defineFact } from './define.ts';

/** A fact of the flock that only a question can set. */
export const onlyAsked = (id: string, unit: 'named' | null, otherwise: string | number) =>
  defineFact({ id, unit, per: 'flock', compute: () => otherwise });

export const toldFacts = [
  onlyAsked('signs-told', 'named', ''),
  onlyAsked('causes-told', 'named', ''),
  onlyAsked('told-by-night', null, 'no'),
  onlyAsked('told-by-day', null, 'no'),
  onlyAsked('told-in-brooder', null, 'no'),
  onlyAsked('asks-medicine', null, 'no'),
  onlyAsked('person-ill', null, 'no'),
  onlyAsked('asks-to-kill', null, 'no'),
];
