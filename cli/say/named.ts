/** Causes of losses and signs by the names that people use: `hawk`, `hawk: 2, not known: 1`, `nothing`. */
import type { Rulebook } from '../../engine/types.ts';
import { listed } from './listed.ts';
import type { Speech } from './speech.ts';

/** What a cause or a sign is called; an id that is in no list is said as it stands. */
export const nameOfTerm = ({ words }: Rulebook, id: string): string => {
  const term = words.signs[id] ?? words.causes[id];
  return term?.name ?? term?.words[0] ?? id.replaceAll('-', ' ');
};

/** A value of unit `named`: ids with blanks between them, each with `=count` behind it or none. */
export const sayNamed = ({ book }: Speech, value: string): string => {
  const items = value.split(' ').filter((each) => each !== '');
  if (items.length === 0) return 'nothing';
  const counted = items.map((item) => item.split('='));
  return counted.some(([, count]) => count !== undefined)
    ? counted.map(([id = '', count = '']) => `${nameOfTerm(book, id)}: ${count.replace('-', '−')}`).join(', ')
    : listed(items.map((id) => nameOfTerm(book, id)));
};
