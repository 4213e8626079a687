/** Every code that the ledger can give has a broken state file here, with the exact problems that it must lead to. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkLedger, foldTo, ledgerCodes, readLedgerFile } from '../../../engine/ledger/index.ts';
import type { Problem } from '../../../engine/problem.ts';
import { book, measure } from '../../helpers/ledger-of.ts';

const here = new URL('.', import.meta.url).pathname;
const everything = { on: '2026-11-25', asOf: null, lines: null };
// A turkey's weight and a temperature never measured near the ground: limits for these specimens only.
const limits = measure({ 'doubt/heaviest-bird': 9, 'doubt/coldest-air': -60 });

/** A problem as its expectation has it: `under` is the part of the line that the caret underlines. */
const plain = (problem: Problem) => {
  const { code, at, raw, data, grave, touches } = problem;
  const under = raw.slice(at.column - 1, at.column - 1 + (at.length ?? 0));
  return { code, line: at.line, column: at.column, under, data, grave, touches };
};

const problemsOf = (code: string): readonly Problem[] => {
  const ledger = readLedgerFile(`${here}${code}/flock.jsonl`, book);
  return [...foldTo(ledger, everything, book).problems, ...checkLedger(ledger, everything, book, limits)];
};

describe('broken state files', () => {
  it('has a specimen for every code, and no other', () => {
    const folders = readdirSync(here, { withFileTypes: true }).filter((each) => each.isDirectory());
    expect(folders.map(({ name }) => name).sort()).toEqual(Object.keys(ledgerCodes).sort());
  });

  it.each(Object.keys(ledgerCodes))('%s', (code) => {
    const expected: unknown = JSON.parse(readFileSync(`${here}${code}/problems.json`, 'utf8'));
    const problems = problemsOf(code);
    expect(problems.map(plain)).toEqual(expected);
    expect(problems.map((problem) => problem.code)).toContain(code);
  });

  it('names the file and shows the line untouched', () => {
    const [problem] = problemsOf('unknown-kind');
    expect(problem?.at.file).toBe(`${here}unknown-kind/flock.jsonl`);
    expect(problem?.raw).toBe('{"kind":"lost","on":"2026-05-02","group":"whites","count":2}');
  });
});
