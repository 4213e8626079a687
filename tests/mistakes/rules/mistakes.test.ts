/**
 * Every code that the rulebook can give has broken rule files here, laid over a small good rulebook, with the exact
 * message that a keeper who writes rules must read.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sayProblem } from '../../../cli/say/problem.ts';
import { ownCodes, wordedCodes } from '../../../cli/say/problem-words.ts';
import { ledgerCodes, writingCodes } from '../../../engine/ledger/codes.ts';
import { readRuleFiles } from '../../../engine/rulebook/load.ts';
import { smallRulebook } from '../../helpers/small-rulebook.ts';

const here = new URL('.', import.meta.url).pathname;
const codes = wordedCodes.filter(
  (code) => !(code in ledgerCodes) && !(code in writingCodes) && !ownCodes.includes(code),
);

const problemsOf = (code: string) =>
  smallRulebook(Object.fromEntries(readRuleFiles(`${here}${code}`).map(({ file, text }) => [file, text])))
    .problems;

describe('broken rule files', () => {
  test('there are some for every code, and for no other', () => {
    const folders = readdirSync(here, { withFileTypes: true }).filter((each) => each.isDirectory());
    expect(folders.map(({ name }) => name).sort()).toEqual([...codes].sort());
  });

  test.each(codes)('%s', async (code) => {
    const problems = problemsOf(code);
    const message = problems.map((problem) => `${sayProblem(problem).join('\n')}\n`).join('\n');
    // Only looked up, never written by this test: a message that changes must be read before it is taken.
    expect(existsSync(`${here}${code}/message.txt`)).toBe(true);
    expect(message).toBe(readFileSync(`${here}${code}/message.txt`, 'utf8'));
    expect(problems.map((problem) => problem.code)).toContain(code);
    expect(problems.map(({ grave, touches }) => ({ grave, touches }))).toEqual(
      problems.map(() => ({ grave: true, touches: ['rules'] })),
    );
  });
});
