/** A month named without a day of it: `why not april`. */
import type { Token } from '../tokens.ts';
import { monthNamed, monthWord } from './calendar.ts';

/** Words that are also something else unless a preposition or the end of the line says they are a month. */
const alsoWords = new Set(['may', 'march', 'mar', 'dec', 'jan', 'jun']);
const leads = new Set(
  'in not for of about early late mid until till before after through during by since'.split(' '),
);

/** The month as its full name, or null. */
export const findMonth = (tokens: readonly Token[]): string | null => {
  for (const [at, { word }] of tokens.entries()) {
    const month = monthNamed(word);
    const led = leads.has(tokens[at - 1]?.word ?? '');
    if (month !== null && (led || !alsoWords.has(word))) return monthWord(month);
  }
  return null;
};
