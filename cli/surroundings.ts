/** Clock, folders, streams and terminal, looked at once and handed down: nothing else reads them. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { homedir, userInfo } from 'node:os';
import { dirname, join } from 'node:path';
import type { Day } from '../engine/day.ts';
import { isDay } from '../engine/day.ts';

export interface Surroundings {
  /** The keeper's local day. */
  readonly today: Day;
  /** Local date and time with offset, such as `2026-05-02T07:12:00-04:00`. */
  readonly now: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly stderr: NodeJS.WriteStream;
  /** Where the flock file is when nothing else is said. */
  readonly flockFile: string;
  /** Who is writing, where known. */
  readonly by: string | null;
  /** Whether the locale names a character set that has nothing beyond ASCII to draw with. */
  readonly isAscii: boolean;
  /** Terminal columns, or no limit in a pipe. */
  readonly width: number;
}

const two = (value: number): string => String(value).padStart(2, '0');

/** A local date and time with its offset from UTC, as in RFC 3339. */
export const localTime = (at: Date): string => {
  const offset = -at.getTimezoneOffset();
  const sign = offset < 0 ? '-' : '+';
  const hours = two(Math.floor(Math.abs(offset) / 60));
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  const time = `${two(at.getHours())}:${two(at.getMinutes())}:${two(at.getSeconds())}`;
  return `${day}T${time}${sign}${hours}:${two(Math.abs(offset) % 60)}`;
};

/** The user's data folder: XDG on Linux and others, its equivalents on macOS and Windows. */
const dataFolder = (env: Surroundings['env'], platform: string): string => {
  if (platform === 'win32') return join(env.LOCALAPPDATA ?? join(homedir(), 'AppData', 'Local'), 'penside');
  if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'penside');
  // A relative XDG path is to be ignored, says the specification.
  const xdg = env.XDG_DATA_HOME;
  return join(xdg?.startsWith('/') ? xdg : join(homedir(), '.local', 'share'), 'penside');
};

/** Read in the order of POSIX, the first that is set counting; where none is, a terminal of today is taken. */
const isAsciiIn = ({ LC_ALL, LC_CTYPE, LANG }: Surroundings['env']): boolean => {
  const locale = [LC_ALL, LC_CTYPE, LANG].find((each) => each !== undefined && each !== '');
  return locale !== undefined && !/utf-?8/i.test(locale);
};

const userName = (): string | null => {
  try {
    return userInfo().username;
  } catch {
    // No entry for this user, as in some containers: then nobody is named.
    return null;
  }
};

/** Looks around once. `PENSIDE_NOW` (a day, or a local time with offset) sets the clock, for scripts and for trying things out. */
export const lookAround = (process: NodeJS.Process): Surroundings => {
  const { env, stdin, stdout, stderr, platform } = process;
  const set = env.PENSIDE_NOW;
  const real = localTime(new Date());
  const now = set === undefined ? real : isDay(set) ? `${set}${real.slice(10)}` : set;
  return {
    today: now.slice(0, 10),
    now,
    env,
    stdin,
    stdout,
    stderr,
    flockFile: env.PENSIDE_FILE ?? join(dataFolder(env, platform), 'flock.jsonl'),
    by: env.PENSIDE_BY ?? userName(),
    isAscii: isAsciiIn(env),
    width: stdout.isTTY && stdout.columns > 0 ? stdout.columns : Number.POSITIVE_INFINITY,
  };
};

/** Whether there is a flock file. */
export const isThere = (path: string): boolean => existsSync(path);

/** Makes a new file readable by its owner alone. Null when it was made, else the system's code, such as `EEXIST`. */
export const createFile = (path: string, text: string): string | null => {
  try {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    writeFileSync(path, text, { flag: 'wx', mode: 0o600 });
    return null;
  } catch (error) {
    return error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
  }
};

/**
 * Writes a file that may be there already as one of the same making, known by how it begins; any other is left alone.
 * Null when it was written, else `EEXIST` or the system's code.
 */
export const renewFile = (path: string, text: string, begins: string): string | null => {
  try {
    if (existsSync(path) && !readFileSync(path, 'utf8').startsWith(begins)) return 'EEXIST';
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    return null;
  } catch (error) {
    return error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
  }
};
