/** The chat in a terminal of the system's own, as `script` gives one: it opens, answers, and leaves the terminal clean. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { programPath } from './helpers/program.ts';

let folder = '';
let chat: ChildProcess;
let seen = '';

/** Resolves once the terminal has shown a text after a place; the test's own time limit is the only clock. */
const shows = (text: string, after = 0): Promise<number> =>
  new Promise((resolve) => {
    const look = (): void => {
      const at = stripVTControlCharacters(seen).indexOf(text, after);
      if (at === -1) return;
      chat.stdout?.off('data', look);
      resolve(at + text.length);
    };
    chat.stdout?.on('data', look);
    look();
  });

/** Runs the program in a terminal of 80 columns; `before` and `behind` are what the shell has around it. */
const open = (before = 'exec', behind = '', env: Record<string, string> = {}): void => {
  const run = `stty rows 30 cols 80; ${before} ${process.execPath} ${programPath} ${behind}`;
  chat = spawn('script', ['-qec', run, '/dev/null'], {
    env: {
      PATH: process.env.PATH ?? '',
      HOME: folder,
      XDG_DATA_HOME: folder,
      TERM: 'xterm-256color',
      PENSIDE_NOW: '2026-05-14T07:00:00+00:00',
      // Set on every build machine; a person at a terminal must be served all the same.
      CI: 'true',
      ...env,
    },
  });
  chat.stdout?.on('data', (bytes: Buffer) => {
    seen += bytes.toString('utf8');
  });
};

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  seen = '';
});
afterEach(() => {
  chat.kill();
  rmSync(folder, { recursive: true, force: true });
});

test('opens on the demo, answers, explains, and leaves on Ctrl-D', async () => {
  open();
  const opened = await shows('say:');
  expect(stripVTControlCharacters(seen)).toContain('This is the demo flock. To start your own: penside new');
  chat.stdin?.write('how many birds do I have\r');
  const answered = await shows('Together 73 birds alive', opened);
  chat.stdin?.write('why 1\r');
  await shows('Rule headcount/', answered);
  const exit = new Promise((resolve) => chat.on('exit', resolve));
  chat.stdin?.write('\u0004');
  expect(await exit).toBe(0);
  // Bracketed paste is off and the cursor is back.
  expect(seen.lastIndexOf('\u001b[?2004l')).toBeGreaterThan(seen.lastIndexOf('\u001b[?2004h'));
  expect(seen.lastIndexOf('\u001b[?25h')).toBeGreaterThan(seen.lastIndexOf('\u001b[?25l'));
}, 30_000);

test.each([
  ['named, and the row is gone once it is done', {}, 'Still working on: ask\r\u001b[K'],
  ['named in a row that stays, for a screen reader', { PENSIDE_PLAIN: 'yes' }, 'Still working on: ask\r\n'],
])(
  'what takes longer than a second is %s',
  async (_how, env, row) => {
    // A question that is long in coming; what is written on the one stream has no word of it.
    const pipe = join(folder, 'pipe');
    execFileSync('mkfifo', [pipe]);
    open(`cat ${pipe} |`, `ask > ${join(folder, 'out')}`, env);
    await shows('Still working on: ask');
    const exit = new Promise((resolve) => chat.on('exit', resolve));
    writeFileSync(pipe, 'how many birds do I have\n');
    expect(await exit).toBe(0);
    expect(seen.slice(seen.indexOf('Still'))).toBe(
      `${row}This is the demo flock. To start your own: penside new\r\n`,
    );
    expect(readFileSync(join(folder, 'out'), 'utf8')).toMatch(/^The whites: /);
  },
  30_000,
);
