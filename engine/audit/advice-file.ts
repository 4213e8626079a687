/** The advice log beside the flock file, and the rulebooks that gave the advice: the files of the audit. */
import { randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { type Patience, takeLock } from '../ledger/append/lock.ts';
import { writeLines } from '../ledger/append/write-lines.ts';
import type { Advice, Rulebook } from '../types.ts';
import { type AdviceLog, readAdvice } from './advice-line.ts';

/** `flock.jsonl` → `flock.advice.jsonl`, beside it. */
export const adviceFileOf = (ledgerFile: string): string =>
  `${ledgerFile.replace(/\.jsonl$/, '')}.advice.jsonl`;

// The log waits for nobody for long: an answer matters more than its record.
const brief: Patience = { tries: 8, pause: 25 };

/** Adds a line to a log; false when that could not be done, which is no reason to keep back an answer. */
export const appendAdvice = async (path: string, advice: Advice): Promise<boolean> => {
  try {
    const locking = await takeLock(`${path}.lock`, brief);
    if ('heldBy' in locking) return false;
    try {
      writeLines(path, [JSON.stringify(advice)]);
      return true;
    } finally {
      locking.release();
    }
  } catch {
    return false;
  }
};

/** Reads a log; one that is not there, or cannot be read, holds nothing. */
export const readAdviceFile = (path: string): AdviceLog => {
  try {
    return readAdvice(readFileSync(path, 'utf8'));
  } catch {
    return { advice: [], damaged: [] };
  }
};

// Only what a hash can be: nothing else may become part of a path.
const fileOfRules = (folder: string, hash: string): string | null =>
  /^[0-9a-f]{8,64}$/.test(hash) ? join(folder, `${hash}.json.gz`) : null;

/** Keeps a rulebook for later replays, once; false when that could not be done. It is there whole or not at all. */
export const keepRules = (folder: string, book: Rulebook): boolean => {
  const path = fileOfRules(folder, book.hash);
  if (path === null) return false;
  if (existsSync(path)) return true;
  const part = `${path}.${randomUUID()}.part`;
  try {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    writeFileSync(part, gzipSync(JSON.stringify(book)), { mode: 0o600 });
    renameSync(part, path);
    return true;
  } catch {
    rmSync(part, { force: true });
    return false;
  }
};

/** The rulebook with this hash, as it was kept; null when it is not there or is damaged. */
export const keptRules = (folder: string, hash: string): Rulebook | null => {
  const path = fileOfRules(folder, hash);
  if (path === null) return null;
  try {
    const book: Rulebook = JSON.parse(gunzipSync(readFileSync(path)).toString('utf8'));
    return book.hash === hash ? book : null;
  } catch {
    return null;
  }
};
