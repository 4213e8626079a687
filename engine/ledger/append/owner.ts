/** Who holds a lock, and whether that process is still there. */
import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';

export interface Owner {
  readonly pid: number;
  readonly host: string;
  /** When the process began, in the system's own count; null where the system does not tell. */
  readonly began: string | null;
  /** Tells two locks of one process apart. */
  readonly token: string;
}

// Linux tells when a process began in the 22nd field of its stat line; the name before it, in brackets, may hold spaces.
const beginOf = (pid: number): string | null => {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? null;
  } catch {
    return null;
  }
};

/** This process, as the owner of a new lock. */
export const describeOwner = (): Owner => ({
  pid: process.pid,
  host: hostname(),
  began: beginOf(process.pid),
  token: randomUUID(),
});

/** Reads what a lock file says of its owner; null when it says nothing that can be understood. */
export const readOwner = (text: string): Owner | null => {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return null;
    const { pid, host, began, token } = value as Record<string, unknown>;
    if (typeof pid !== 'number' || typeof host !== 'string' || typeof token !== 'string') return null;
    return { pid, host, began: typeof began === 'string' ? began : null, token };
  } catch {
    return null;
  }
};

const isRunning = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // EPERM: it runs, under somebody else's name
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
};

/** Whether the owner is certainly gone: on this host, and its process ended or its number was given to another process. */
export const isGone = (owner: Owner | null): boolean => {
  if (owner === null || owner.host !== hostname() || !Number.isInteger(owner.pid) || owner.pid <= 0)
    return false;
  if (!isRunning(owner.pid)) return true;
  const began = beginOf(owner.pid);
  return owner.began !== null && began !== null && owner.began !== began;
};
