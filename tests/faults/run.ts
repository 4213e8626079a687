/** `npm run faults`: all tests of faults in full, and a table of what was tried and what was lost. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Tried } from './extent.ts';

const folder = mkdtempSync(join(tmpdir(), 'penside-faults-'));
const table = join(folder, 'table.jsonl');
const run = spawnSync(
  process.execPath,
  ['node_modules/vitest/vitest.mjs', 'run', 'tests/faults', '--reporter=default', ...process.argv.slice(2)],
  {
    cwd: new URL('../..', import.meta.url),
    stdio: 'inherit',
    env: { ...process.env, FAULTS: 'full', FAULTS_TABLE: table },
  },
);

const rows: readonly Tried[] = existsSync(table)
  ? readFileSync(table, 'utf8')
      .split('\n')
      .filter((line) => line !== '')
      .map((line) => JSON.parse(line))
  : [];
rmSync(folder, { recursive: true, force: true });

const widest = Math.max(4, ...rows.map(({ what }) => what.length));
const show = (what: string, times: string, lost: string, note: string): void =>
  console.log(`${what.padEnd(widest)}  ${times.padStart(8)}  ${lost.padStart(5)}  ${note}`.trimEnd());
show('what', 'tried', 'lost', '');
for (const { what, times, lost, note = '' } of rows) show(what, String(times), String(lost), note);
// A test that failed told no row: then the table alone would look too good.
if (run.status !== 0) console.log('\nNot all held: see the failed tests above.');
process.exitCode = run.status ?? 1;
