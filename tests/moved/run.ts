/** `npm run moved -- REF`: which answers moved between a git revision and the tree as it stands, for the changelog. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { lexiconFor } from '../helpers/learned.ts';
import { rulebook } from '../helpers/rulebook-of.ts';
import { type Golden, goldenFlocks } from './golden.ts';
import { compareAnswers, type Given } from './moves.ts';
import { showMoves } from './show.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

const run = (command: string, ...args: readonly string[]): void => {
  const { status, stderr } = spawnSync(command, args, { cwd: root, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}: ${stderr}`);
};

/** Rules and code of a revision in a folder of their own, with the packages of today. */
const lay = (revision: string, folder: string): string => {
  const archive = `${folder}.tar`;
  run('git', 'archive', '--output', archive, revision, 'engine', 'rules', 'package.json', 'tsconfig.json');
  mkdirSync(folder);
  run('tar', '-xf', archive, '-C', folder);
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  return folder;
};

/** Has a tree answer; only its own engine and rules are loaded. */
const answersOf = (tree: string, flocks: string, to: string): Promise<readonly Given[]> =>
  new Promise((resolve, reject) => {
    const script = fileURLToPath(new URL('./ask-all.ts', import.meta.url));
    const asking = spawn(process.execPath, ['--import', 'tsx', script, tree, flocks, to], {
      cwd: root,
      stdio: ['ignore', 'inherit', 'inherit'],
    });
    asking.on('close', (status) =>
      status === 0
        ? resolve(JSON.parse(readFileSync(to, 'utf8')))
        : reject(new Error(`${tree} did not come to its end`)),
    );
  });

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { step: { type: 'string', default: '7' } },
});
const [revision] = positionals;
if (revision === undefined) throw new Error('which revision? as: npm run moved -- HEAD --step 7');

const folder = mkdtempSync(join(tmpdir(), 'penside-moved-'));
try {
  const { book } = rulebook();
  const flocks: readonly Golden[] = await goldenFlocks(book, lexiconFor(book), Number(values.step));
  const [file, earlier] = [join(folder, 'flocks.json'), lay(revision, join(folder, 'earlier'))];
  writeFileSync(file, JSON.stringify(flocks));
  const [before, after] = await Promise.all([
    answersOf(earlier, file, join(folder, 'before.json')),
    answersOf(root, file, join(folder, 'after.json')),
  ]);
  const today = flocks.at(-1)?.moments.at(-1)?.on ?? '';
  const speech = { book, system: 'us', currency: '$', today } as const;
  const mornings = flocks.reduce((sum, { moments }) => sum + moments.length, 0);
  process.stdout.write(`${flocks.length} flocks, ${mornings} mornings, ${revision} and now\n`);
  process.stdout.write(
    `${showMoves(speech, compareAnswers(speech, before, after))
      .map((line) => `${line}\n`)
      .join('')}`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
