/** The compiled rulebook that ships beside the program, and what understanding has learned from it. */
import { readFileSync } from 'node:fs';
import type { Rulebook } from '../engine/types.ts';
import { type Lexicon, makeLexicon } from './understand/lexicon.ts';

const read = (name: string) => JSON.parse(readFileSync(new URL(`./${name}`, import.meta.url), 'utf8'));

/** Reads the rulebook that the build has checked and compiled; it needs no YAML parser. */
export const shippedRulebook = (): Rulebook => read('rulebook.json');

/** The lexicon of the shipped rulebook; learning its weights anew would cost a third of a second at every start. */
export const shippedLexicon = (book: Rulebook): Lexicon => makeLexicon(book, read('learned.json'));
