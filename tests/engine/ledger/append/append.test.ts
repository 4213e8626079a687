/** Writing to the file: all or nothing, safe beside other writers, and a problem instead of an error. */
import { fork } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { appendEntries, type NewEntry, readLedgerFile } from '../../../../engine/ledger/index.ts';
import { book, measure, textOf, whites } from '../../../helpers/ledger-of.ts';

const loss: NewEntry = { kind: 'loss', on: '2026-05-02', group: 'whites', count: 2 };
const freshPath = (...inside: readonly string[]): string =>
  join(mkdtempSync(join(tmpdir(), 'penside-')), ...inside, 'flock.jsonl');
const append = (path: string, ...entries: readonly NewEntry[]) =>
  appendEntries(path, entries, book, measure(), { tries: 1, pause: 0 });

describe('appendEntries', () => {
  it('starts a file, in a new folder if need be, that only its owner can read', async () => {
    const path = freshPath('farm', 'records');
    const { isWritten, first } = await append(path, whites, loss);
    expect([isWritten, first]).toEqual([true, 1]);
    expect(readFileSync(path, 'utf8')).toBe(textOf(whites, loss));
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(readdirSync(join(path, '..'))).toEqual(['flock.jsonl']);
  });

  it('adds to what stands there, ending a line that was cut off first', async () => {
    const path = freshPath();
    writeFileSync(path, `${textOf(whites)}{"kind":"lo`);
    await append(path, loss);
    expect(readFileSync(path, 'utf8')).toBe(`${textOf(whites)}{"kind":"lo\n${textOf(loss)}`);
  });

  it('writes nothing when one of the entries is wrong', async () => {
    const path = freshPath();
    writeFileSync(path, textOf(whites));
    const { isWritten, problems } = await append(path, loss, { ...loss, group: 'whtes' });
    expect([isWritten, problems.map(({ code, at }) => [code, at.line])]).toEqual([
      false,
      [['unknown-group', 3]],
    ]);
    expect(readFileSync(path, 'utf8')).toBe(textOf(whites));
  });

  it('writes what is merely doubtful, and says so', async () => {
    const path = freshPath();
    const heavy: NewEntry = { kind: 'weigh', on: '2026-05-05', group: 'whites', weights: ['31 lb'] };
    const limits = measure({ 'doubt/heaviest-bird': 9 });
    const { isWritten, problems } = await appendEntries(path, [whites, heavy], book, limits);
    expect([isWritten, problems.map(({ code }) => code)]).toEqual([true, ['doubtful-value']]);
  });

  it('tells of a lock that another writer holds, and leaves it alone', async () => {
    const path = freshPath();
    const held = JSON.stringify({ pid: 1, host: 'another-house', began: null, token: 'x' });
    writeFileSync(`${path}.lock`, held);
    const { isWritten, problems } = await append(path, whites);
    expect([isWritten, problems]).toEqual([
      false,
      [
        {
          code: 'locked',
          at: { file: path, line: 1, column: 1 },
          raw: '',
          data: { lock: `${path}.lock`, process: 1, host: 'another-house' },
          grave: true,
          touches: [],
        },
      ],
    ]);
    expect([existsSync(path), readFileSync(`${path}.lock`, 'utf8')]).toEqual([false, held]);
  });

  it('tells of a file that cannot be read or written', async () => {
    const folder = freshPath();
    mkdirSync(folder);
    expect((await append(folder, whites)).problems.map(({ code, data }) => [code, data.cause])).toEqual([
      ['unreadable-file', 'EISDIR'],
    ]);
    const below = join(freshPath(), 'x', 'flock.jsonl');
    writeFileSync(join(below, '..', '..'), '');
    expect((await append(below, whites)).problems.map(({ code, data }) => [code, data.cause])).toEqual([
      ['not-written', 'ENOTDIR'],
    ]);
  });

  it('keeps the entries of several programs that write at once, each once and whole', async () => {
    const path = freshPath();
    writeFileSync(path, textOf(whites));
    const writer = new URL('./writer.ts', import.meta.url).pathname;
    const write = (name: string): Promise<number | null> =>
      new Promise((resolve) => {
        fork(writer, [path, name, '12'], { execArgv: ['--import', 'tsx'] }).on('exit', resolve);
      });
    expect(await Promise.all(['Ada', 'Ben', 'Cleo'].map(write))).toEqual([0, 0, 0]);
    const { entries, problems } = readLedgerFile(path, book);
    expect(problems).toEqual([]);
    const told = entries.slice(1).map(({ by, fields }) => `${by} ${fields.words}`);
    const wanted = ['Ada', 'Ben', 'Cleo'].flatMap((name) =>
      Array.from({ length: 12 }, (_, index) => `${name} ${index}`),
    );
    expect(told.sort()).toEqual(wanted.sort());
  });
});
