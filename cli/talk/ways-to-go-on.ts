/** What a line begun at the prompt may go on with: things to ask and tell, the groups, and single words of them. */
import type { Rulebook } from '../../engine/types.ts';
import { type Flock, momentOn } from './flock.ts';

/** From this many on, whole lines are too many to look through, and the next word is offered instead. */
const tooMany = 5;

/** Words that are worth completing are no shorter. */
const shortest = 4;

const sentences = (book: Rulebook): readonly string[] => [
  ...Object.values(book.questions).map(({ example }) => example),
  ...Object.values(book.records).map(({ example }) => example),
];

const namesIn = (flock: Flock): readonly string[] =>
  flock
    .engine()
    .state(momentOn(flock, flock.today))
    .groups.map(({ name }) => name);

/** The examples speak of some group; the keeper's own are put in its place, one line for each. */
const withNames = (lines: readonly string[], names: readonly string[]): readonly string[] =>
  lines.flatMap((line) =>
    names.length > 0 && /\bthe (whites|reds)\b/.test(line)
      ? names.map((name) => line.replace(/\bthe (whites|reds)\b/, `the ${name}`))
      : [line],
  );

const unlike = (lines: readonly string[]): readonly string[] => [...new Set(lines)].sort();

/** A line cut behind the word that the cursor is in, or the next one where it stands behind a word. */
const upToNextWord = (line: string, from: number): string => {
  const end = line.indexOf(' ', line[from] === ' ' ? from + 1 : from);
  return end === -1 ? line : line.slice(0, end);
};

const lineWays = (before: string, lines: readonly string[]): readonly string[] => {
  const begun = before.toLowerCase();
  const fitting = unlike(lines.filter((line) => line.toLowerCase().startsWith(begun) && line !== before));
  if (fitting.length < tooMany) return fitting;
  const words = unlike(fitting.map((line) => upToNextWord(line, before.length)));
  return words.length > 1 ? words : fitting;
};

const wordWays = (before: string, names: readonly string[], lines: readonly string[]): readonly string[] => {
  const at = before.lastIndexOf(' ') + 1;
  const begun = before.slice(at).toLowerCase();
  const rest = before.slice(0, at);
  const begins = (word: string): boolean => word.toLowerCase().startsWith(begun) && word !== begun;
  const groups = names.filter(begins);
  const known = lines.flatMap((line) => line.toLowerCase().match(/[a-z]+/g) ?? []);
  const words = begun === '' ? [] : unlike(known.filter((word) => word.length >= shortest && begins(word)));
  return [...new Set([...groups, ...words])].map((word) => rest + word);
};

/** All ways to go on with what stands before the cursor, itself included: whole lines or their next words first, else a last word. */
export const waysToGoOn = (flock: Flock, before: string): readonly string[] => {
  const begun = before.trimStart();
  const names = namesIn(flock);
  const lines = withNames(sentences(flock.book), names);
  const whole = lineWays(begun, lines);
  return whole.length > 0 ? whole : wordWays(begun, names, lines);
};
