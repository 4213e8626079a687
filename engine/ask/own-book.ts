/** The published rulebook with the keeper's own rule files in it, or without them where anything is wrong with them. */
import type { Problem } from '../problem.ts';
import type { Known } from '../rulebook/checks/index.ts';
import type { RuleFile } from '../rulebook/document.ts';
import type { Rulebook } from '../types.ts';
import { caseFaults } from './cases.ts';

export interface OwnBook {
  readonly book: Rulebook;
  /** Everything wrong with the own files; where there is anything the book is the published one, unchanged. */
  readonly problems: readonly Problem[];
}

/** Checks own files as published ones are checked, their cases too, and lays them over a book. */
export const layOwnRules = async (
  base: Rulebook,
  files: readonly RuleFile[],
  known: Known,
): Promise<OwnBook> => {
  // Reading YAML takes longer than an answer; without own files nobody should wait for it.
  const { layOwn } = await import('../rulebook/own.ts');
  const { book, problems, documents } = layOwn(base, files, known);
  if (problems.length > 0) return { book: base, problems };
  const own = Object.values(book.rules).filter((rule) => rule.own !== undefined);
  const faults = await caseFaults(book, own);
  if (faults.length === 0) return { book, problems: [] };
  return {
    book: base,
    problems: faults.flatMap(({ rule, index, name, expect, found }) => {
      const document = documents.get(`rule:${rule}`);
      return document === undefined
        ? []
        : [document.problemAt(['cases', index, 'expect'], 'case-fails', { name, expect, found })];
    }),
  };
};
