/** Builds the shipped program: checks and compiles the rules into JSON, bundles the code, and gathers the licences. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import { known } from '../../engine/index.ts';
import { buildRulebook, readRuleFiles } from '../../engine/rulebook/load.ts';
import type { Rulebook } from '../../engine/types.ts';
import { sayProblem } from '../say/problem.ts';
import { toFiles } from '../understand/learn/keep.ts';
import { learnedFor } from './learned.ts';
import { licencesOf } from './licences.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const out = `${root}dist`;

/** Modules that the program never uses: a debugger's back end, and path expressions in rule files, which we do not allow. */
const leaveOut = (names: readonly string[]): Plugin => ({
  name: 'leave-out',
  setup: ({ onResolve, onLoad }) => {
    const filter = new RegExp(`^(${names.join('|')})$`);
    onResolve({ filter }, ({ path }) => ({ path, namespace: 'left-out' }));
    onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({
      contents:
        'export const JSONPath = () => { throw new Error("paths are not allowed"); }; export default {};',
    }));
  },
});

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

const compileRules = (): void => {
  const { book, problems } = buildRulebook(readRuleFiles(`${root}rules`), known);
  if (problems.length > 0) {
    for (const problem of problems) process.stderr.write(`${sayProblem(problem).join('\n')}\n\n`);
    throw new Error(`the rules have ${problems.length} problems`);
  }
  writeFileSync(`${out}/rulebook.json`, JSON.stringify(forRunning(book)));
  for (const [name, bytes] of Object.entries(toFiles(learnedFor(book))))
    writeFileSync(`${out}/${name}`, bytes);
};

const bundle = async (): Promise<void> => {
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: { penside: 'cli/main.ts' },
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    outdir: out,
    outExtension: { '.js': '.mjs' },
    minify: true,
    legalComments: 'none',
    jsx: 'automatic',
    metafile: true,
    logLevel: 'warning',
    define: { 'process.env.NODE_ENV': '"production"', 'process.env.DEV': '"false"' },
    plugins: [leaveOut(['react-devtools-core', 'jsonpath-plus'])],
    // CommonJS packages inside an ESM bundle still call require for Node's own modules.
    banner: {
      js: "import{createRequire as nodeRequire}from'node:module';const require=nodeRequire(import.meta.url);",
    },
  });
  writeFileSync(`${out}/metafile.json`, JSON.stringify(metafile));
  writeFileSync(`${out}/LICENCES.txt`, licencesOf(root, metafile));
};

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
compileRules();
await bundle();
