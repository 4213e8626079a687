/** The lock: one holder, taken over from the dead and only from them, and nothing left behind. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { takeLock } from '../../../../engine/ledger/append/lock.ts';
import { describeOwner, isGone, readOwner } from '../../../../engine/ledger/append/owner.ts';

const soon = { tries: 2, pause: 0 };
const freshLock = (): string => join(mkdtempSync(join(tmpdir(), 'penside-')), 'flock.jsonl.lock');
const filesBeside = (lock: string): readonly string[] => readdirSync(join(lock, '..'));

/** An owner whose process has certainly ended. */
const dead = () => {
  const { pid } = spawnSync(process.execPath, ['-e', '']);
  return { pid, host: hostname(), began: null, token: 'dead' };
};

describe('takeLock', () => {
  it('gives the lock to one at a time', async () => {
    const lock = freshLock();
    const first = await takeLock(lock, soon);
    const second = await takeLock(lock, soon);
    expect(second).toMatchObject({ heldBy: { pid: process.pid, host: hostname() } });
    if ('release' in first) first.release();
    expect(filesBeside(lock)).toEqual([]);
    expect(await takeLock(lock, soon)).toHaveProperty('release');
  });

  it('takes over from a process that ended, with all it left behind', async () => {
    const lock = freshLock();
    const owner = JSON.stringify(dead());
    for (const name of [lock, `${lock}.guard`, `${lock}.123.dead`]) writeFileSync(name, owner);
    const taken = await takeLock(lock, soon);
    expect(taken).toHaveProperty('release');
    expect(filesBeside(lock)).toEqual(['flock.jsonl.lock']);
    expect(readOwner(readFileSync(lock, 'utf8'))?.pid).toBe(process.pid);
  });

  it('does not take over while another writer is taking over', async () => {
    const lock = freshLock();
    writeFileSync(lock, JSON.stringify(dead()));
    writeFileSync(`${lock}.guard`, JSON.stringify(describeOwner()));
    expect(await takeLock(lock, soon)).toMatchObject({ heldBy: { token: 'dead' } });
  });

  it('leaves a lock alone that it cannot read', async () => {
    const lock = freshLock();
    writeFileSync(lock, '');
    expect(await takeLock(lock, soon)).toEqual({ heldBy: null });
  });

  it('gives back only its own lock', async () => {
    const lock = freshLock();
    const first = await takeLock(lock, soon);
    writeFileSync(lock, JSON.stringify(dead()));
    if ('release' in first) first.release();
    expect(readFileSync(lock, 'utf8')).toContain('dead');
  });
});

describe('isGone', () => {
  it('is sure only of processes on this host', () => {
    const self = describeOwner();
    expect(isGone(self)).toBe(false);
    expect(isGone(dead())).toBe(true);
    expect(isGone({ ...dead(), host: 'another-house' })).toBe(false);
    expect(isGone(null)).toBe(false);
    expect(isGone({ ...self, pid: -1 })).toBe(false);
  });

  it.runIf(process.platform === 'linux')('knows that a number was given to another process', () => {
    expect(isGone({ ...describeOwner(), began: '1' })).toBe(true);
  });
});
