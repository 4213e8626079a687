/** Which misspelt words stand for a known one: one slip away, from five letters on, and no word of everyday English. */
import { distance } from 'fastest-levenshtein';
import { everydayWords } from './everyday-words.ts';
import { functionWords } from './function-words.ts';
import { stemOf } from './stem.ts';
import type { Token } from './tokens.ts';

const shortest = 5;
const shortestSwap = 4;

/** Two neighbouring letters changed over; plain enough from four letters on. */
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

/** The words that a slip can stand for. */
export interface Known {
  readonly words: ReadonlySet<string>;
  readonly stems: ReadonlySet<string>;
  /** Names of groups, tried first. */
  readonly names: readonly string[];
}

const meantBy = (word: string, known: Known): string | null => {
  const isMeant = (other: string): boolean =>
    other[0] === word[0] &&
    other.length >= shortestSwap &&
    Math.abs(other.length - word.length) <= 1 &&
    (isSwap(word, other) || (word.length >= shortest && distance(word, other) === 1));
  for (const other of known.names) if (isMeant(other)) return other;
  for (const other of known.words) if (isMeant(other)) return other;
  return null;
};

/** Replaces slips. The first known word in the order of the rule files wins, so the outcome never wavers. */
export const mendSlips = (tokens: readonly Token[], known: Known): readonly Token[] =>
  tokens.map((token) => {
    const isPlain = token.word.length < shortestSwap || !/^[a-z]+$/.test(token.word);
    const isKnown =
      known.words.has(token.word) || known.stems.has(token.stem) || known.names.includes(token.word);
    if (isPlain || isKnown || everydayWords.has(token.word) || functionWords.has(token.word)) return token;
    const meant = meantBy(token.word, known);
    return meant === null ? token : { ...token, word: meant, stem: stemOf(meant) };
  });
