/** A disk that is full, gone or not to be written to: a clear problem, and the file as it was. */
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { appendEntries } from '../../engine/ledger/index.ts';
import { often, patience, tell } from './extent.ts';
import { notesOnly, readNotes, today } from './notes-only.ts';
import { openDesk } from './writing.ts';

const noteOf = (words: string): string =>
  `${JSON.stringify({ kind: 'note', on: today, words, by: 'Ada' })}\n`;

test(
  'a disk that fills up in the middle of an entry',
  async () => {
    const times = often(6, 60);
    const desk = openDesk();
    try {
      for (let each = 0; each < times; each += 1) {
        // The limit of 1024 bytes falls on another byte of what is written each time.
        const before = noteOf('x'.repeat(850 + each));
        writeFileSync(desk.path, before);
        const writing = desk.write('Ada', 0, 100, { mostKilobytes: 1 });
        expect(await writing.ended).toBe(1);
        expect(writing.refused).toEqual(['not-written EFBIG']);
        const stands = writing.acknowledged.map((number) => noteOf(String(number))).join('');
        expect(readFileSync(desk.path, 'utf8')).toBe(before + stands);
        expect(readdirSync(desk.folder).sort()).toEqual(['flock.jsonl', 'writer.mjs']);
      }
      tell({ what: 'file at its greatest size in the middle of an entry', times, lost: 0 });
    } finally {
      desk.close();
    }
  },
  patience,
);

test(
  'a small disk of its own, where one can be mounted, filled to the last byte',
  async () => {
    const desk = openDesk();
    const disk = join(desk.folder, 'disk');
    mkdirSync(disk);
    const isMounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', disk]).status === 0;
    try {
      const path = join(isMounted ? disk : desk.folder, 'flock.jsonl');
      const append = (words: string) =>
        appendEntries(path, [{ kind: 'note', on: today, words, by: 'Ada' }], notesOnly, {
          today,
          limits: {},
        });
      const stands: string[] = [];
      let refused: readonly string[] = [];
      while (refused.length === 0 && stands.length < 100) {
        const words = `${stands.length} ${'y'.repeat(900)}`;
        const { isWritten, problems } = await append(words);
        if (isWritten) stands.push(noteOf(words));
        else refused = problems.map(({ code, data }) => `${code} ${data.cause}`);
      }
      expect(refused).toEqual(isMounted ? ['not-written ENOSPC'] : []);
      expect(readFileSync(path, 'utf8')).toBe(stands.join(''));
      expect(existsSync(`${path}.lock`)).toBe(false);
      tell({
        what: 'full disk',
        times: isMounted ? stands.length : 0,
        lost: 0,
        note: isMounted ? 'a disk of 64 kB' : 'no disk can be mounted here',
      });
    } finally {
      if (isMounted) spawnSync('umount', [disk]);
      desk.close();
    }
  },
  patience,
);

test(
  'a file, and then a folder, that may only be read',
  async () => {
    const desk = openDesk();
    try {
      // The writer runs as nobody, since rights are nothing to an administrator.
      chmodSync(desk.folder, 0o777);
      chmodSync(join(desk.folder, 'writer.mjs'), 0o644);
      const before = noteOf('before');
      writeFileSync(desk.path, before);
      chmodSync(desk.path, 0o444);
      const readOnly = desk.write('Ada', 0, 1, { asNobody: true });
      expect([await readOnly.ended, readOnly.refused]).toEqual([1, ['not-written EACCES']]);
      expect(readdirSync(desk.folder).sort()).toEqual(['flock.jsonl', 'writer.mjs']);

      chmodSync(desk.path, 0o000);
      const hidden = desk.write('Ada', 0, 1, { asNobody: true });
      expect([await hidden.ended, hidden.refused]).toEqual([1, ['unreadable-file EACCES']]);

      chmodSync(desk.path, 0o666);
      chmodSync(desk.folder, 0o555);
      const closed = desk.write('Ada', 0, 1, { asNobody: true });
      expect([await closed.ended, closed.refused]).toEqual([1, ['not-written EACCES']]);
      expect(readFileSync(desk.path, 'utf8')).toBe(before);
      tell({
        what: 'file or folder that may not be read or written',
        times: 3,
        lost: 0,
        note: 'run as nobody',
      });
    } finally {
      chmodSync(desk.folder, 0o700);
      desk.close();
    }
  },
  patience,
);

test(
  'a folder that vanishes is made again, for its owner alone; a file in its place is told',
  async () => {
    const desk = openDesk();
    try {
      const folder = join(desk.folder, 'farm');
      const path = join(folder, 'flock.jsonl');
      const append = () =>
        appendEntries(path, [{ kind: 'note', on: today, words: 'x', by: 'Ada' }], notesOnly, {
          today,
          limits: {},
        });
      expect((await append()).isWritten).toBe(true);
      rmSync(folder, { recursive: true });
      expect((await append()).isWritten).toBe(true);
      expect(readNotes(path)).toEqual({ notes: ['Ada x'], wrong: [], text: noteOf('x') });
      expect([statSync(folder).mode & 0o777, statSync(path).mode & 0o777]).toEqual([0o700, 0o600]);
      rmSync(folder, { recursive: true });
      writeFileSync(folder, 'a file');
      const { isWritten, problems } = await append();
      expect([isWritten, problems.map(({ code }) => code), readFileSync(folder, 'utf8')]).toEqual([
        false,
        ['not-written'],
        'a file',
      ]);
      tell({ what: 'vanished folder', times: 2, lost: 0 });
    } finally {
      desk.close();
    }
  },
  patience,
);
