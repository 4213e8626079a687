/** Which strip of the ground a line names: `strip 3`, `lane b`, `the first strip`. */
import type { Token } from '../tokens.ts';

const strips = new Set(['strip', 'lane', 'plot', 'paddock', 'row']);
const ordinals = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];
const spoken = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** A number in digits, a number word, or the place of a single letter in the alphabet; null for other words. */
const numberIn = (word: string): number | null => {
  if (/^\d+$/.test(word)) return Number(word);
  if (/^[a-z]$/.test(word)) return word.charCodeAt(0) - 'a'.charCodeAt(0) + 1;
  const at = spoken.indexOf(word);
  return at < 0 ? null : at + 1;
};

/** The number of the strip, from 1; null where none is named. */
export const findStrip = (tokens: readonly Token[]): number | null => {
  for (const [at, { word }] of tokens.entries()) {
    if (!strips.has(word)) continue;
    const after = numberIn(tokens[at + 1]?.word ?? '');
    const before = ordinals.indexOf(tokens[at - 1]?.word ?? '');
    if (after !== null) return after;
    if (before >= 0) return before + 1;
  }
  return null;
};
