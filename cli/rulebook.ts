/** The compiled rulebook that ships beside the program, with the keeper's own rule files in it where there are any. */
import { readFileSync } from 'node:fs';
import { withOwnRules } from '../engine/index.ts';
import type { Problem } from '../engine/problem.ts';
import type { Rulebook } from '../engine/types.ts';
import { openShipped } from './shipped-book.ts';
import { fromFiles } from './understand/learn/keep.ts';
import { type Lexicon, makeLexicon } from './understand/lexicon.ts';

const read = (name: string): Uint8Array => readFileSync(`${import.meta.dirname}/${name}`);

/** Reads the rulebook that the build has checked and compiled; it needs no YAML parser. */
export const shippedRulebook = (): Rulebook =>
  openShipped((name) => readFileSync(`${import.meta.dirname}/${name}`, 'latin1'));

/** The lexicon of the shipped rulebook; learning its weights anew would take some ten seconds. */
export const shippedLexicon = (book: Rulebook): Lexicon => makeLexicon(book, fromFiles(read));

/** What was found in the folder of the keeper's own rule files. */
export interface OwnFiles {
  readonly folder: string;
  readonly files: readonly { readonly file: string; readonly text: string }[];
  /** Files that were not read, and why. */
  readonly refused: readonly { readonly file: string; readonly why: string }[];
}

/** A book, and what is wrong with the own files; where anything is, the book is the published one alone. */
export interface OwnRules {
  readonly book: Rulebook;
  readonly problems: readonly Problem[];
}

const refusedProblem = ({ file, why }: OwnFiles['refused'][number]): Problem => ({
  code: 'file-refused',
  at: { file, line: 1, column: 1 },
  raw: '',
  data: { why },
  grave: true,
  touches: ['rules'],
});

/** Lays own files over the published book; problems name them by their whole path. */
export const withOwnFiles = async (
  book: Rulebook,
  { folder, files, refused }: OwnFiles,
): Promise<OwnRules> => {
  const own =
    refused.length > 0 ? { book, problems: refused.map(refusedProblem) } : await withOwnRules(book, files);
  return {
    book: own.book,
    problems: own.problems.map((each) => ({
      ...each,
      at: { ...each.at, file: `${folder}/${each.at.file}` },
    })),
  };
};
