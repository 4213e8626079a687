/** One writer at a time: a lock file beside the state file, given back when done and taken from owners that died. */
import { linkSync, readdirSync, readFileSync, unlinkSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { describeOwner, isGone, type Owner, readOwner } from './owner.ts';

/** How long to wait for another writer: how often to try again, and the milliseconds between. */
export interface Patience {
  readonly tries: number;
  readonly pause: number;
}

export type Locking = { readonly release: () => void } | { readonly heldBy: Owner | null };

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error ? String(error.code) : '';

const NO_HARD_LINKS: ReadonlySet<string> = new Set([
  'EPERM',
  'ENOSYS',
  'ENOTSUP',
  'EOPNOTSUPP',
  'EMLINK',
  'EXDEV',
]);

const readHolder = (lock: string): Owner | null => {
  try {
    return readOwner(readFileSync(lock, 'utf8'));
  } catch {
    return null;
  }
};

const remove = (path: string): void => {
  try {
    unlinkSync(path);
  } catch (error) {
    if (codeOf(error) !== 'ENOENT') throw error;
  }
};

const isMade = (make: () => void): boolean => {
  try {
    make();
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw error;
  }
};

/**
 * Makes the lock file unless there is one. A file of its own is written in full and then linked under the name of the lock,
 * so that nobody ever sees a lock without its owner; where the disk knows no links, the lock is written under its name at once.
 */
const makeLock = (lock: string, owner: Owner): boolean => {
  const own = `${lock}.${owner.pid}.${owner.token}`;
  const text = JSON.stringify(owner);
  writeFileSync(own, text, { flag: 'wx', mode: 0o600 });
  try {
    return isMade(() => linkSync(own, lock));
  } catch (error) {
    if (!NO_HARD_LINKS.has(codeOf(error))) throw error;
    return isMade(() => writeFileSync(lock, text, { flag: 'wx', mode: 0o600 }));
  } finally {
    remove(own);
  }
};

/**
 * Removes a lock whose owner died. Only who holds the guard may do so: between seeing a dead owner and removing the lock,
 * another writer could have removed it and made a live one. A guard left by a crash within these few lines is removed unguarded.
 */
const removeDead = (lock: string, owner: Owner): boolean => {
  const guard = `${lock}.guard`;
  if (isGone(readHolder(guard))) remove(guard);
  if (!makeLock(guard, owner)) return false;
  try {
    if (isGone(readHolder(lock))) remove(lock);
    return true;
  } finally {
    remove(guard);
  }
};

// A writer that was killed between writing its own file and linking it leaves that file behind. It harms nobody, so a
// folder that does not let it be removed is no reason to fail.
const sweep = (lock: string): void => {
  try {
    const folder = dirname(lock);
    const left = readdirSync(folder).filter((name) => name.startsWith(`${basename(lock)}.`));
    for (const path of left.map((name) => join(folder, name))) {
      if (isGone(readHolder(path))) remove(path);
    }
  } catch {}
};

const release = (lock: string, owner: Owner): void => {
  if (readHolder(lock)?.token === owner.token) remove(lock);
};

/** Takes the lock, or tells after a bounded wait who holds it. Throws the system's error where no lock can be made at all. */
export const takeLock = async (lock: string, patience: Patience): Promise<Locking> => {
  const owner = describeOwner();
  for (let tried = 0; tried <= patience.tries; tried += 1) {
    if (makeLock(lock, owner)) {
      sweep(lock);
      return { release: () => release(lock, owner) };
    }
    const isFree = isGone(readHolder(lock)) && removeDead(lock, owner);
    if (!isFree) await wait(patience.pause);
  }
  return { heldBy: readHolder(lock) };
};
