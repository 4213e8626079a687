/**
 * What only a rule file of the keeper's can have wrong: broken files laid over a small published rulebook, with the
 * exact message, and the published rulebook untouched beside it.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sayProblem } from '../../../cli/say/problem.ts';
import { ownCodes } from '../../../cli/say/problem-words.ts';
import { layOwnRules } from '../../../engine/ask/own-book.ts';
import { readRuleFiles } from '../../../engine/rulebook/load.ts';
import { smallKnown, smallRulebook } from '../../helpers/small-rulebook.ts';

const here = new URL('.', import.meta.url).pathname;
// A file that is not read at all never comes this far; see tests/cli/own-files.test.ts.
const codes = ownCodes.filter((code) => code !== 'file-refused');

describe('broken rule files of the keeper', () => {
  test('there are some for every code, and for no other', () => {
    const folders = readdirSync(here, { withFileTypes: true }).filter((each) => each.isDirectory());
    expect(folders.map(({ name }) => name).sort()).toEqual([...codes].sort());
  });

  test.each(codes)('%s', async (code) => {
    const { book: base } = smallRulebook();
    const { book, problems } = await layOwnRules(base, readRuleFiles(`${here}${code}`), smallKnown);
    const message = problems.map((problem) => `${sayProblem(problem).join('\n')}\n`).join('\n');
    expect(existsSync(`${here}${code}/message.txt`)).toBe(true);
    expect(message).toBe(readFileSync(`${here}${code}/message.txt`, 'utf8'));
    expect(problems.map((problem) => problem.code)).toContain(code);
    expect(book).toBe(base);
  });
});
