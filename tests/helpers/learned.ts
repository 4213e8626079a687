/** What the shipped program has learned, for tests that listen. */
import { learnedFor } from '../../cli/build/learned.ts';
import { type Learned, type Lexicon, makeLexicon } from '../../cli/understand/lexicon.ts';
import type { Rulebook } from '../../engine/types.ts';
import { readRules } from './read-rules.ts';

let known: Learned | undefined;

/** Read once a run: test files share their modules. */
export const shippedLearned = (): Learned => {
  known ??= learnedFor(readRules());
  return known;
};

/** The lexicon of a book that says what the shipped one says. */
export const lexiconFor = (book: Rulebook): Lexicon => makeLexicon(book, shippedLearned());

/** Learns before any test file wants it. */
export const setup = (): void => {
  shippedLearned();
};
