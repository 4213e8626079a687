/** Which misspelt words stand for a known one: one slip away, from five letters on, and no word of everyday English. */
import { distance } from 'fastest-levenshtein';
import { everydayWords } from './everyday-words.ts';
import { stemOf } from './stem.ts';
import type { Token } from './tokens.ts';

const shortest = 5;

const isSwap = (one: string, other: string): boolean => {
  if (one.length !== other.length) return false;
  const at = [...one].findIndex((letter, n) => letter !== other[n]);
  return (
    at >= 0 &&
    one[at] === other[at + 1] &&
    one[at + 1] === other[at] &&
    one.slice(at + 2) === other.slice(at + 2)
  );
};

const meantBy = (word: string, known: ReadonlySet<string>): string | null => {
  for (const other of known) {
    if (other[0] !== word[0] || other.length < shortest - 1 || Math.abs(other.length - word.length) > 1)
      continue;
    if (distance(word, other) === 1 || isSwap(word, other)) return other;
  }
  return null;
};

/** Replaces slips. The first known word in the order of the rule files wins, so the outcome never wavers. */
export const mendSlips = (tokens: readonly Token[], known: ReadonlySet<string>): readonly Token[] => {
  const stems = new Set([...known].map(stemOf));
  return tokens.map((token) => {
    const isPlain = token.word.length < shortest || !/^[a-z]+$/.test(token.word);
    if (isPlain || known.has(token.word) || everydayWords.has(token.word) || stems.has(token.stem))
      return token;
    const meant = meantBy(token.word, known);
    return meant === null ? token : { ...token, word: meant, stem: stemOf(meant) };
  });
};
