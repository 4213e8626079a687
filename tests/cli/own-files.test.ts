/** The keeper's own rule files as they are found on the disk: which are read, which are refused, and why. */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { withOwnFiles } from '../../cli/rulebook.ts';
import { sayProblem } from '../../cli/say/problem.ts';
import { ownRulesFolder, readOwnRules } from '../../cli/surroundings.ts';
import { smallRulebook } from '../helpers/small-rulebook.ts';

let home = '';
let flock = '';
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'penside-'));
  flock = join(home, 'flock.jsonl');
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

const write = (file: string, text: string): void => {
  const path = join(home, 'flock.rules', file);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
};

test('are in a folder named for the flock file, beside it', () => {
  expect(ownRulesFolder('/home/nell/flock.jsonl')).toBe('/home/nell/flock.rules');
  expect(ownRulesFolder('/home/nell/birds')).toBe('/home/nell/birds.rules');
  expect(readOwnRules(flock)).toBeNull();
});

test('are read in the order of their paths; templates, hidden files and other kinds of files are not', () => {
  write('sources/our-notes.yaml', 'a');
  write('decisions/go-out/late.yaml', 'b');
  write('decisions/go-out/_template.yaml', 'c');
  write('.git/config.yaml', 'd');
  write('notes.txt', 'e');
  expect(readOwnRules(flock)).toEqual({
    folder: join(home, 'flock.rules'),
    files: [
      { file: 'decisions/go-out/late.yaml', text: 'b' },
      { file: 'sources/our-notes.yaml', text: 'a' },
    ],
    refused: [],
  });
});

test('are not followed out of their folder, nor down deeper than rules go', () => {
  write('sources/our-notes.yaml', 'a');
  symlinkSync('/etc/hostname', join(home, 'flock.rules', 'sources', 'out.yaml'));
  symlinkSync('/etc', join(home, 'flock.rules', 'sources', 'etc'));
  write('decisions/a/b/deep.yaml', 'b');
  expect(readOwnRules(flock)).toEqual({
    folder: join(home, 'flock.rules'),
    files: [{ file: 'sources/our-notes.yaml', text: 'a' }],
    refused: [
      { file: 'decisions/a/b', why: 'its folder is deeper than any rule file' },
      { file: 'sources/out.yaml', why: 'it is a link or no plain file' },
    ],
  });
});

test('are refused when one of them is huge', () => {
  write('sources/huge.yaml', '#'.repeat(64 * 1024 + 1));
  write('sources/large.yaml', '#'.repeat(64 * 1024));
  const found = readOwnRules(flock);
  expect(found?.files.map(({ file }) => file)).toEqual(['sources/large.yaml']);
  expect(found?.refused).toEqual([{ file: 'sources/huge.yaml', why: 'it is larger than 64 kilobytes' }]);
});

test('are refused when there are thousands of them, without reading them all', async () => {
  mkdirSync(join(home, 'flock.rules', 'decisions', 'go-out'), { recursive: true });
  for (let n = 0; n < 1500; n += 1) {
    writeFileSync(join(home, 'flock.rules', 'decisions', 'go-out', `rule-${n}.yaml`), 'gives: no\n');
  }
  const found = readOwnRules(flock);
  expect(found?.files.length).toBe(200);
  expect(found?.refused.map(({ why }) => why)).toEqual([
    'there are more than 1000 files in the folder',
    'there are more than 200 rule files',
  ]);
  const { book } = smallRulebook();
  const own = found === null ? null : await withOwnFiles(book, found);
  expect(own?.book).toBe(book);
  expect(own?.problems.map(({ code }) => code)).toEqual(['file-refused', 'file-refused']);
});

test('are refused when their folder is none', () => {
  writeFileSync(join(home, 'flock.rules'), 'no folder');
  expect(readOwnRules(flock)?.refused).toEqual([{ file: '', why: 'ENOTDIR' }]);
});

test('problems with them name the file by its whole path', async () => {
  write('sources/our-notes.yaml', 'author: us\ntitle: Notes\nyear: 2026\nstanding: judgement\n');
  const found = readOwnRules(flock);
  const { book } = smallRulebook();
  const own = found === null ? null : await withOwnFiles(book, found);
  expect(own?.book).toBe(book);
  expect(own?.problems.map((problem) => sayProblem(problem)[0])).toEqual([
    `${join(home, 'flock.rules')}/sources/our-notes.yaml, line 1, column 1: where is missing.`,
  ]);
});
