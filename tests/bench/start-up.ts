/** How long penside takes to start, as a ratio to a bare Node started in the same run. `npm run bench` prints the table. */
import { type SpawnSyncOptions, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { programPath as program } from '../helpers/program.ts';
import { median, printTable } from './table.ts';

const node = process.execPath;
const rounds = 15;
const nowhere = '/nonexistent';
/** Where the program keeps what it compiled, as on any machine that it has been used on a few times. */
const cache = mkdtempSync(join(tmpdir(), 'penside-bench-'));
const usedBefore = 9;
const quiet: SpawnSyncOptions = {
  stdio: 'ignore',
  env: { ...process.env, XDG_DATA_HOME: nowhere, XDG_STATE_HOME: nowhere, XDG_CACHE_HOME: cache },
};

const once = (args: readonly string[]): number => {
  const from = performance.now();
  spawnSync(node, args, quiet);
  return performance.now() - from;
};

/** From start to the prompt on a terminal. */
const firstFrame = (): Promise<number> =>
  new Promise((resolve) => {
    const from = performance.now();
    const run = `stty rows 30 cols 80; exec ${node} ${program}`;
    const chat = spawn('script', ['-qec', run, '/dev/null'], { env: { ...quiet.env, TERM: 'xterm' } });
    chat.stdout.on('data', (bytes: Buffer) => {
      if (!bytes.toString('utf8').includes('say:')) return;
      resolve(performance.now() - from);
      chat.kill();
    });
  });

/** A bare Node under the same terminal, so that the terminal's own start is not held against the chat. */
const bareFrame = (): Promise<number> =>
  new Promise((resolve) => {
    const from = performance.now();
    const chat = spawn('script', ['-qec', `stty rows 30 cols 80; exec ${node} -e 0`, '/dev/null'], {
      env: quiet.env,
    });
    chat.on('exit', () => resolve(performance.now() - from));
  });

/** How long the chat is left standing at first, in milliseconds: it keeps what it compiled after three seconds. */
const standing = 4000;

const chatLeftStanding = (): void => {
  const run = `stty rows 30 cols 80; timeout ${standing / 1000} ${node} ${program}`;
  spawnSync('script', ['-qec', run, '/dev/null'], { ...quiet, env: { ...quiet.env, TERM: 'xterm' } });
};

for (let time = 0; time < usedBefore; time += 1) once([program, 'can they go out']);
chatLeftStanding();

const bare: number[] = [];
const asked: number[] = [];
const bareInTerminal: number[] = [];
const chatted: number[] = [];
// Taken in turn, so that a busy moment of the machine falls on all of them.
for (let round = 0; round < rounds; round += 1) {
  bare.push(once(['-e', '0']));
  asked.push(once([program, 'can they go out']));
  bareInTerminal.push(await bareFrame());
  chatted.push(await firstFrame());
}

const row = (name: string, taken: readonly number[], against: readonly number[]): string[] => [
  name,
  median(taken).toFixed(0),
  (median(taken) / median(against)).toFixed(2),
];

printTable(`Start-up, median of ${rounds}`, [
  ['what', 'ms', 'ratio'],
  row('node -e 0', bare, bare),
  row('one-shot answer', asked, bare),
  row('node -e 0 in a terminal', bareInTerminal, bareInTerminal),
  row('chat, first frame', chatted, bareInTerminal),
]);
rmSync(cache, { recursive: true });
