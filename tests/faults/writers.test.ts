/** Several writers at once: every entry once and whole; the lock of a dead one is taken over, that of a live one waited for. */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { sayProblem } from '../../cli/say/problem.ts';
import { appendEntries } from '../../engine/ledger/index.ts';
import { isFull, often, patience, tell } from './extent.ts';
import { notesOnly, readNotes, today } from './notes-only.ts';
import { openDesk } from './writing.ts';

const append = (path: string, words: string, tries: number) =>
  appendEntries(
    path,
    [{ kind: 'note', on: today, words, by: 'Cleo' }],
    notesOnly,
    { today, limits: {} },
    { tries, pause: 20 },
  );
const lockOf = (pid: number): string => JSON.stringify({ pid, host: hostname(), began: null, token: 'x' });

test.each(isFull ? [2, 4, 8] : [4])(
  '%d writers at once: all entries once, none into another',
  async (writers) => {
    const desk = openDesk();
    try {
      const each = Math.floor(often(100, 2000) / writers);
      const names = Array.from({ length: writers }, (_, number) => `writer-${number}`);
      const writings = names.map((name) => desk.write(name, 0, each));
      expect(await Promise.all(writings.map(({ ended }) => ended))).toEqual(names.map(() => 0));
      const { notes, wrong, text } = readNotes(desk.path);
      const wanted = names.flatMap((name) =>
        Array.from({ length: each }, (_, number) => `${name} ${number}`),
      );
      expect([...notes].sort()).toEqual(wanted.sort());
      expect([wrong, text.endsWith('}\n'), existsSync(`${desk.path}.lock`)]).toEqual([[], true, false]);
      tell({
        what: `${writers} writers at once`,
        times: wanted.length,
        lost: wanted.filter((note) => !notes.includes(note)).length,
      });
    } finally {
      desk.close();
    }
  },
  patience,
);

test('the lock of a dead process is taken over at once, also where its owner was stopped by force', async () => {
  const desk = openDesk();
  try {
    const { pid } = spawnSync(process.execPath, ['-e', '']);
    writeFileSync(`${desk.path}.lock`, lockOf(pid));
    expect((await append(desk.path, 'after', 1)).isWritten).toBe(true);
    expect(readNotes(desk.path).notes).toEqual(['Cleo after']);
    tell({ what: 'lock of a dead process', times: 1, lost: 0 });
  } finally {
    desk.close();
  }
});

test(
  'a live writer is waited for, and named where it does not come to an end',
  async () => {
    const desk = openDesk();
    const holder = spawn('sleep', ['30'], { stdio: 'ignore' });
    try {
      const lock = `${desk.path}.lock`;
      const text = lockOf(holder.pid ?? 0);
      writeFileSync(lock, text);
      const refused = await append(desk.path, 'too soon', 1);
      expect([refused.isWritten, existsSync(desk.path), readFileSync(lock, 'utf8')]).toEqual([
        false,
        false,
        text,
      ]);
      expect(refused.problems.flatMap((problem) => [...sayProblem(problem)])).toEqual([
        `${desk.path}, line 1, column 1: somebody else is writing to the file (process ${holder.pid} on ${hostname()}).`,
        `  Nothing was written. Try again in a moment; if that process is no more, remove ${lock}.`,
      ]);

      const waiting = append(desk.path, 'in its turn', 1000);
      const stillWaits = await Promise.race([waiting.then(() => false), wait(60, true)]);
      expect([stillWaits, existsSync(desk.path)]).toEqual([true, false]);
      holder.kill('SIGKILL');
      expect((await waiting).isWritten).toBe(true);
      expect(readNotes(desk.path).notes).toEqual(['Cleo in its turn']);
      tell({ what: 'lock of a live process', times: 2, lost: 0 });
    } finally {
      holder.kill('SIGKILL');
      desk.close();
    }
  },
  patience,
);
