/** Writing entries into the state file: under a lock, after a dry run on what stands there now, and onto the disk before it counts. */
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Problem } from '../../problem.ts';
import { writingCodes } from '../codes.ts';
import type { Book, Measure } from '../ledger.ts';
import { readText, unreadableFile } from '../read.ts';
import { type Patience, takeLock } from './lock.ts';
import type { Owner } from './owner.ts';
import { type NewEntry, type Tried, tryAppend } from './try-append.ts';
import { writeLines } from './write-lines.ts';

/** What became of entries that were to be written: all of them were, or none. Problems that are not grave do not prevent it. */
export interface Appended extends Tried {
  readonly isWritten: boolean;
}

// A writer holds the lock for a few milliseconds; two seconds tell another one at work from one that hangs.
const patient: Patience = { tries: 80, pause: 25 };

const none = (problem: Problem): Appended => ({ lines: [], first: 0, problems: [problem], isWritten: false });

const problemOf = (code: keyof typeof writingCodes, file: string, data: Problem['data']): Problem => ({
  code,
  at: { file, line: 1, column: 1 },
  raw: '',
  data,
  grave: writingCodes[code],
  touches: [],
});

const describe = (lock: string, owner: Owner | null): Problem['data'] =>
  owner === null ? { lock } : { lock, process: owner.pid, host: owner.host };

const appendLocked = (path: string, entries: readonly NewEntry[], book: Book, measure: Measure): Appended => {
  const now = readText(path);
  if ('failed' in now) return none(unreadableFile(path, now.failed));
  const tried = tryAppend(path, now.text, entries, book, measure);
  if (tried.problems.some((problem) => problem.grave)) return { ...tried, isWritten: false };
  writeLines(path, tried.lines);
  return { ...tried, isWritten: true };
};

/** Writes entries that were told in one breath, all or none. Never throws on what it finds in files or on the disk. */
export const appendEntries = async (
  path: string,
  entries: readonly NewEntry[],
  book: Book,
  measure: Measure,
  patience: Patience = patient,
): Promise<Appended> => {
  const lock = `${path}.lock`;
  try {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    const locking = await takeLock(lock, patience);
    if ('heldBy' in locking) return none(problemOf('locked', path, describe(lock, locking.heldBy)));
    try {
      return appendLocked(path, entries, book, measure);
    } finally {
      locking.release();
    }
  } catch (error) {
    // anything but an error of the system is a bug of ours and must not pass for a full disk
    if (!(error instanceof Error && 'code' in error)) throw error;
    return none(problemOf('not-written', path, { cause: String(error.code) }));
  }
};
