/** A one-shot answer over ledgers of a thousand to a hundred thousand entries, beside a Node that only parses the same file. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { programPath } from '../helpers/program.ts';
import { longLedger } from './long-ledger.ts';
import { median, printTable } from './table.ts';

const today = '2026-05-14';
const rounds = 5;
const usedBefore = 3;
const folder = mkdtempSync(join(tmpdir(), 'penside-bench-'));

/** Reads and parses each line, and keeps the whole, as any program that knows the file must. */
const parse = `const all = require('fs').readFileSync(process.argv[1], 'utf8').trimEnd().split('\\n').map((line) => JSON.parse(line));
if (all.length === 0) throw new Error('nothing read');`;

/** Tells on standard error how much memory a process took at most, in kilobytes. */
const tellMemory = join(folder, 'tell-memory.cjs');

interface Run {
  readonly ms: number;
  readonly kilobytes: number;
}

const run = (args: readonly string[]): Run => {
  const from = performance.now();
  const { stderr } = spawnSync(process.execPath, ['--require', tellMemory, ...args], {
    encoding: 'utf8',
    env: { PATH: process.env.PATH ?? '', HOME: folder, PENSIDE_NOW: today, PENSIDE_LOG: 'no' },
  });
  const ms = performance.now() - from;
  return { ms, kilobytes: Number(/^memory (\d+)$/m.exec(stderr)?.[1]) };
};

const middle = (runs: readonly Run[], of: keyof Run): number => median(runs.map((each) => each[of]));

const rows: string[][] = [];
try {
  writeFileSync(
    tellMemory,
    "process.on('exit', () => process.stderr.write('memory ' + process.resourceUsage().maxRSS + '\\n'));",
  );
  for (const entries of [1000, 10_000, 100_000]) {
    const file = join(folder, `${entries}.jsonl`);
    writeFileSync(file, longLedger(today, entries));
    const parsed: Run[] = [];
    const answered: Run[] = [];
    // The first runs leave what they compiled to the later ones.
    for (let time = 0; time < usedBefore; time += 1)
      run([programPath, '--file', file, 'how many birds do I have']);
    for (let round = 0; round < rounds; round += 1) {
      parsed.push(run(['-e', parse, file]));
      answered.push(run([programPath, '--file', file, 'how many birds do I have']));
    }
    const [ms, most] = [middle(answered, 'ms'), middle(answered, 'kilobytes')];
    rows.push([
      String(entries),
      middle(parsed, 'ms').toFixed(0),
      ms.toFixed(0),
      (ms / middle(parsed, 'ms')).toFixed(2),
      (most / 1024).toFixed(0),
      (most / middle(parsed, 'kilobytes')).toFixed(2),
    ]);
  }
} finally {
  rmSync(folder, { recursive: true });
}
printTable('One-shot answer by entries', [
  ['entries', 'parsed, ms', 'answer, ms', 'ratio', 'MB', 'ratio'],
  ...rows,
]);
