/** The chat in a terminal of the system's own, as `script` gives one: it opens, answers, and leaves the terminal clean. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
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

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
  seen = '';
  const run = `stty rows 30 cols 80; exec ${process.execPath} ${programPath}`;
  chat = spawn('script', ['-qec', run, '/dev/null'], {
    env: {
      PATH: process.env.PATH ?? '',
      HOME: folder,
      XDG_DATA_HOME: folder,
      TERM: 'xterm-256color',
      PENSIDE_NOW: '2026-05-14T07:00:00+00:00',
      // Set on every build machine; a person at a terminal must be served all the same.
      CI: 'true',
    },
  });
  chat.stdout?.on('data', (bytes: Buffer) => {
    seen += bytes.toString('utf8');
  });
});
afterEach(() => {
  chat.kill();
  rmSync(folder, { recursive: true, force: true });
});

test('opens on the demo, answers, explains, and leaves on Ctrl-D', async () => {
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
