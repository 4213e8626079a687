/** Lists that must not forget anything: facts, entry kinds, checks, commands, and the words for each of them. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { wordedCodes } from '../cli/say/problem-words.ts';
import type { Fact } from '../engine/facts/define.ts';
import { allFacts } from '../engine/facts/index.ts';
import { kinds, ledgerCodes, writingCodes } from '../engine/ledger/index.ts';
import { rulebook } from './helpers/rulebook-of.ts';
import { root, type SourceFile, sourceFiles } from './helpers/source-files.ts';

const { book } = rulebook();

const below = (folder: string): readonly SourceFile[] =>
  sourceFiles.filter(({ path }) => path.startsWith(folder));

const all = (pattern: RegExp, files: readonly SourceFile[]): string[] =>
  files.flatMap(({ code }) => [...code.matchAll(pattern)].map((match) => match[1] ?? '')).sort();

const isFact = (value: unknown): value is Fact =>
  typeof value === 'object' && value !== null && 'compute' in value && 'needs' in value;

describe('facts', () => {
  test('are all in the list, each id once', async () => {
    const modules: Record<string, unknown>[] = await Promise.all(
      below('engine/facts/').map(({ path }) => import(/* @vite-ignore */ `${root}${path}`)),
    );
    const declared = new Set(modules.flatMap((module) => Object.values(module).flat().filter(isFact)));
    expect([...declared].filter((fact) => allFacts.get(fact.id) !== fact).map(({ id }) => id)).toEqual([]);
    expect(declared.size).toBe(allFacts.size);
  });

  test('take nothing for granted that has no words, and no words are left over', () => {
    const given = below('engine/facts/').flatMap(({ code }) =>
      [...code.matchAll(/\.assume\(([^;]*?)\);/g)].map(([, text = '']) => text),
    );
    // The id comes first, or one of two by a condition that may read facts; what is in braces fills the wording.
    const assumed = given.flatMap((text) =>
      [...(text.replace(/read\.\w+\('[^']*'\)/g, '').split('{')[0] ?? '').matchAll(/'([a-z-]+)'/g)].map(
        ([, id]) => id,
      ),
    );
    expect([...new Set(assumed)].sort()).toEqual(Object.keys(book.assumptions).sort());
  });
});

describe.each([
  ['entry kinds', 'engine/ledger/kinds/', / = defineKind\(/],
  ['checks of the ledger', 'engine/ledger/checks/', /: Check = /],
  ['checks of the rulebook', 'engine/rulebook/checks/', /: RulebookCheck = /],
  ['commands', 'cli/commands/', /: Command = /],
] as const)('%s', (_, folder, declares) => {
  test('are all in the list of their folder', () => {
    const [index, files] = [below(`${folder}index.ts`)[0], below(folder)];
    const names = files
      .filter(({ path }) => path !== `${folder}index.ts`)
      .flatMap(({ code }) => [...code.matchAll(/^export const (\w+)(.*)$/gm)])
      .flatMap(([, name = '', rest = '']) => (declares.test(rest) ? [name] : []));
    const lists = [...(index?.code.matchAll(/ = \[([^\]]*)\]/g) ?? [])].map(([, list]) => list).join();
    expect(names.length).toBeGreaterThan(2);
    // One check of the rulebook runs after the list, on what the others found.
    const after = index?.code.slice(index.code.lastIndexOf('export const')) ?? '';
    expect(names.filter((name) => !new RegExp(`\\b${name}\\b`).test(`${lists} ${after}`))).toEqual([]);
  });
});

describe('entry kinds', () => {
  test('are each in a file of their own name', () => {
    const files = below('engine/ledger/kinds/').map(({ path }) => path.replace(/.*\/|\.ts$/g, ''));
    expect(kinds.map(({ kind }) => kind).filter((kind) => !files.includes(kind))).toEqual([]);
  });

  test('have words in rules/records, but for those that only the program writes', () => {
    const told = kinds.map(({ kind }) => kind).filter((kind) => kind !== 'undo' && kind !== 'correct');
    expect(Object.keys(book.records).sort()).toEqual([...told].sort());
  });
});

describe('problems', () => {
  test('all have a wording, and no wording is for a problem that there is not', () => {
    // Rule files of the keeper's have their cases run, and are found, elsewhere.
    const source = ['engine/rulebook/', 'engine/ask/own-book.ts', 'cli/rulebook.ts'].flatMap(below);
    // The code is the argument after the place; two are chosen by a condition, and names are `unknown-` something.
    const named = [
      ...all(
        /\bproblem(?:At|AtKey)?\((?:\[[^\]]*\]|\w+(?:\([^)]*\))?(?: \?\? \w+)?),\s*'([a-z-]+)'/g,
        source,
      ),
      ...all(/\? '([a-z-]+)' : '[a-z-]+', (?:\{\}|data)\)/g, source),
      ...all(/\? '[a-z-]+' : '([a-z-]+)', (?:\{\}|data)\)/g, source),
      ...all(/\bcode: '([a-z-]+)'/g, source),
      ...all(/\bat\(\w+, '([a-z-]+)'/g, source),
      ...all(/\bexpect\([^;]*?, '([a-z]+)', [a-z]/g, source).map((what) => `unknown-${what}`),
    ];
    const codes = new Set([...named, ...Object.keys(ledgerCodes), ...Object.keys(writingCodes)]);
    expect([...codes].sort()).toEqual([...wordedCodes].sort());
  });
});

describe('commands', () => {
  test('are all told of in the README', () => {
    const names = all(/\bname: '([a-z-]+)',\s*says/g, below('cli/commands/'));
    const readme = readFileSync(`${root}README.md`, 'utf8');
    expect(names.length).toBeGreaterThan(2);
    expect(names.filter((name) => !readme.includes(`penside ${name}`))).toEqual([]);
  });
});
