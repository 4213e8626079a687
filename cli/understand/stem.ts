/** What a word is matched by: itself without a plural or an -ing. The -ed stays, because it tells a record from a question. */

const vowel = /[aeiouy]/;

/** Without its e, each of these would be another word. */
const keepsE = new Set([
  'note',
  'here',
  'home',
  'care',
  'wide',
  'cane',
  'cape',
  'cute',
  'date',
  'fate',
  'fire',
  'hide',
  'hope',
  'mate',
  'pine',
  'plane',
  'rate',
  'ripe',
  'site',
  'tape',
  'there',
  'these',
  'tube',
  'were',
  'wine',
]);

const dropE = (word: string): string =>
  word.length > 3 && word.endsWith('e') && !keepsE.has(word) ? word.slice(0, -1) : word;

const undouble = (word: string): string => (/([bdgmnprt])\1$/.test(word) ? word.slice(0, -1) : word);

/** The stem of a lower-case word. The same stem may be no word of its own (`moving`, `move` → `mov`). */
export const stemOf = (word: string): string => {
  if (word.length <= 3) return word;
  if (word.endsWith('ies')) return word.length > 4 ? `${word.slice(0, -3)}y` : word;
  if (/(?:ss|sh|ch|x|z)es$/.test(word)) return word.slice(0, -2);
  if (word.endsWith('s') && !/(?:ss|us|is)$/.test(word)) return dropE(word.slice(0, -1));
  if (word.endsWith('ing') && word.length > 5 && vowel.test(word.slice(0, -3)))
    return undouble(word.slice(0, -3));
  return dropE(word);
};
