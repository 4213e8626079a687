/** What a word that nothing knows was likely meant to be, when it is too far off to be mended unasked. */
import { distance } from 'fastest-levenshtein';
import { everydayWords } from './everyday-words.ts';
import { functionWords } from './function-words.ts';
import { stemOf } from './stem.ts';
import { tokenise } from './tokens.ts';

/** Shorter words are like too many others. */
const shortest = 4;
/** From this length on, two letters may be wrong however the word sounds. */
const long = 7;

/** The consonants that carry how a word sounds, roughly: `brudr` and `brooder` are alike in it. */
const soundOf = (word: string): string =>
  word
    .replace(/ph/g, 'f')
    .replace(/ck|[cq]/g, 'k')
    .replace(/z/g, 's')
    .replace(/(?<=.)[aeiouyhw]/g, '')
    .replace(/(.)\1+/g, '$1');

const isAlike = (word: string, other: string): boolean => {
  const apart = distance(word, other);
  const sounds = soundOf(word) === soundOf(other) && soundOf(word).length > 2 && apart <= 3;
  return sounds || (word.length >= long ? apart <= 2 : apart <= 1 && word[0] === other[0]);
};

/** Everything a word may be without being a slip. */
export interface KnownWords {
  readonly words: ReadonlySet<string>;
  readonly stems: ReadonlySet<string>;
}

/**
 * The line with each unknown word put as the likeliest of `candidates`, the first of those equally near; null where there
 * is no such word, or nothing is like it.
 */
export const mendFarSlips = (
  line: string,
  known: KnownWords,
  candidates: readonly string[],
): string | null => {
  const isKnown = (word: string, stem: string): boolean =>
    known.words.has(word) || known.stems.has(stem) || everydayWords.has(word) || functionWords.has(word);
  const slips = tokenise(line).flatMap(({ word, stem, start, end }) => {
    if (word.length < shortest || !/^[a-z]+$/.test(word) || isKnown(word, stem)) return [];
    const [meant] = candidates
      .filter((each) => each.length >= shortest && isAlike(word, each))
      .sort((one, other) => distance(word, one) - distance(word, other));
    return meant === undefined || stemOf(meant) === stem ? [] : [{ start, end, meant }];
  });
  // From the end, so that the places before it stay what they are.
  const mended = slips.reduceRight(
    (text, { start, end, meant }) => text.slice(0, start) + meant + text.slice(end),
    line,
  );
  return slips.length === 0 ? null : mended;
};
