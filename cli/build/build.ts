/** Builds the shipped program into `dist`: checks and compiles the rules, bundles the code, and gathers the licences. */
import { chmodSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { known } from '../../engine/index.ts';
import { buildRulebook, readRuleFiles } from '../../engine/rulebook/load.ts';
import type { Rulebook } from '../../engine/types.ts';
import { sayProblem } from '../say/problem.ts';
import { shipBook } from '../shipped-book.ts';
import { toFiles } from '../understand/learn/keep.ts';
import { bundleInto } from './bundle.ts';
import { learnedFor } from './learned.ts';
import { licencesOf } from './licences.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** The rulebook without what only tests and learning need: half its size, and as much less to read at every start. */
const forRunning = (book: Rulebook): Rulebook => {
  const untaught = <T extends object>(parts: Readonly<Record<string, T>>): Record<string, T> =>
    Object.fromEntries(Object.entries(parts).map(([id, part]) => [id, { ...part, phrasings: [] }]));
  const untested = Object.entries(book.rules).map(([id, rule]) => [id, { ...rule, cases: [] }] as const);
  return {
    ...book,
    questions: untaught(book.questions),
    records: untaught(book.records),
    rules: Object.fromEntries(untested),
  };
};

const compileRules = (out: string): void => {
  const { book, problems } = buildRulebook(readRuleFiles(`${root}rules`), known);
  if (problems.length > 0) {
    for (const problem of problems) process.stderr.write(`${sayProblem(problem).join('\n')}\n\n`);
    throw new Error(`the rules have ${problems.length} problems`);
  }
  const files = { ...shipBook(forRunning(book)), ...toFiles(learnedFor(book)) };
  for (const [name, contents] of Object.entries(files)) writeFileSync(`${out}/${name}`, contents);
};

/** Builds beside `dist` and puts it in place at the end, so that whoever runs the program meanwhile runs a whole one. */
const build = async (dist: string): Promise<void> => {
  const out = mkdtempSync(`${dist}.`);
  try {
    // A folder made for a short while is its maker's alone; this one is for whoever runs the program.
    chmodSync(out, 0o755);
    compileRules(out);
    const metafile = await bundleInto(root, out);
    writeFileSync(`${out}/LICENCES.txt`, licencesOf(root, metafile));
    rmSync(dist, { recursive: true, force: true });
    renameSync(out, dist);
  } finally {
    rmSync(out, { recursive: true, force: true });
  }
};

await build(process.argv[2] ?? `${root}dist`);
