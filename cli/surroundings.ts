/** Clock, folders, streams and terminal, looked at once and handed down: nothing else reads them. */
import {
  type Dirent,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { homedir, userInfo } from 'node:os';
import { dirname, join } from 'node:path';
import type { Day } from '../engine/day.ts';
import { isDay } from '../engine/day.ts';
import { type Env, foldersOf, isReadOnlyIn } from './folders.ts';

export interface Surroundings {
  /** The keeper's local day. */
  readonly today: Day;
  /** Local date and time with offset, such as `2026-05-02T07:12:00-04:00`. */
  readonly now: string;
  readonly env: Env;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly stderr: NodeJS.WriteStream;
  /** Where the flock file is when nothing else is said. */
  readonly flockFile: string;
  /** Where the rules that gave advice are kept; undefined where `PENSIDE_LOG=no` says that none is to be noted. */
  readonly rulesFolder: string | undefined;
  /** Where what can be fetched again is kept. */
  readonly cacheFolder: string;
  /** Where is kept what a program remembers of its use, such as the lines sent in the chat. */
  readonly stateFolder: string;
  /** The local date and time with offset now, for what goes on while the program stays open. */
  readonly clock: () => string;
  /** Asks something of the network, as the global `fetch` does. */
  readonly askNetwork: (url: string, init: RequestInit) => Promise<Response>;
  /** Where copies of the flock go when no folder is named. */
  readonly copiesFolder: string;
  /** Whether nothing is to be written, as on a helper's machine: PENSIDE_READ_ONLY is set. */
  readonly isReadOnly: boolean;
  /** Who is writing, where known. */
  readonly by: string | null;
  /** Whether the locale names a character set that has nothing beyond ASCII to draw with. */
  readonly isAscii: boolean;
  /** Terminal columns; in a pipe those of COLUMNS, or no limit but that of the text itself. */
  readonly width: number;
}

const two = (value: number): string => String(value).padStart(2, '0');

/** A local date and time with its offset from UTC, as in RFC 3339. */
const localTime = (at: Date): string => {
  const offset = -at.getTimezoneOffset();
  const sign = offset < 0 ? '-' : '+';
  const hours = two(Math.floor(Math.abs(offset) / 60));
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  const time = `${two(at.getHours())}:${two(at.getMinutes())}:${two(at.getSeconds())}`;
  return `${day}T${time}${sign}${hours}:${two(Math.abs(offset) % 60)}`;
};

/** Read in the order of POSIX, the first that is set counting; where none is, a terminal of today is taken. */
export const isAsciiIn = ({ LC_ALL, LC_CTYPE, LANG }: Env): boolean => {
  const locale = [LC_ALL, LC_CTYPE, LANG].find((each) => each !== undefined && each !== '');
  return locale !== undefined && !/utf-?8/i.test(locale);
};

/** How wide text may become: as wide as the terminal, else as COLUMNS says, else as wide as it likes to be. */
export const widthOf = (stdout: Pick<NodeJS.WriteStream, 'isTTY' | 'columns'>, { COLUMNS }: Env): number => {
  if (stdout.isTTY && stdout.columns > 0) return stdout.columns;
  const told = Number(COLUMNS);
  return Number.isInteger(told) && told > 0 ? told : Number.POSITIVE_INFINITY;
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
  const { env, platform } = process;
  const set = env.PENSIDE_NOW;
  const real = localTime(new Date());
  const folders = foldersOf(env, platform, homedir());
  const now = set === undefined ? real : isDay(set) ? `${set}${real.slice(10)}` : set;
  return {
    today: now.slice(0, 10),
    now,
    env,
    // Each is opened when it is looked at: an answer in a pipe never looks at the keyboard.
    get stdin() {
      return process.stdin;
    },
    get stdout() {
      return process.stdout;
    },
    get stderr() {
      return process.stderr;
    },
    flockFile: env.PENSIDE_FILE ?? join(folders.data, 'flock.jsonl'),
    rulesFolder: env.PENSIDE_LOG === 'no' ? undefined : join(folders.data, 'rulebooks'),
    cacheFolder: folders.cache,
    stateFolder: folders.state,
    copiesFolder: join(folders.data, 'copies'),
    isReadOnly: isReadOnlyIn(env),
    clock: () => (set === undefined ? localTime(new Date()) : now),
    askNetwork: (url, init) => fetch(url, init),
    get by() {
      return env.PENSIDE_BY ?? userName();
    },
    isAscii: isAsciiIn(env),
    get width() {
      return widthOf(process.stdout, env);
    },
  };
};

/** Whether there is a flock file. */
export const isThere = (path: string): boolean => existsSync(path);

/** Limits of what is read as own rules: far more than a keeper writes, and too little to keep anybody waiting. */
const ownLimits = { files: 200, bytes: 64 * 1024, entries: 1000, depth: 3 };

export interface OwnRuleFiles {
  readonly folder: string;
  /** Paths below the folder, with slashes, in their order. */
  readonly files: readonly { readonly file: string; readonly text: string }[];
  readonly refused: readonly { readonly file: string; readonly why: string }[];
}

const nameless = /^[_.]/;

/** The entries below a folder, nearest names first; a folder too deep, and more entries than allowed, are told and not opened. */
const entriesBelow = (
  folder: string,
): {
  readonly found: readonly { file: string; entry: Dirent }[];
  readonly refused: OwnRuleFiles['refused'];
} => {
  const found: { file: string; entry: Dirent }[] = [];
  const refused: { file: string; why: string }[] = [];
  let isFull = false;
  const open = (inside: string, depth: number): void => {
    const entries = readdirSync(join(folder, inside), { withFileTypes: true });
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      if (nameless.test(entry.name)) continue;
      const file = inside === '' ? entry.name : `${inside}/${entry.name}`;
      if (found.length === ownLimits.entries) {
        if (!isFull)
          refused.push({ file, why: `there are more than ${ownLimits.entries} files in the folder` });
        isFull = true;
        return;
      }
      if (!entry.isDirectory()) found.push({ file, entry });
      else if (depth === ownLimits.depth)
        refused.push({ file, why: 'its folder is deeper than any rule file' });
      else open(file, depth + 1);
    }
  };
  open('', 1);
  return { found, refused };
};

/** Where the keeper's own rules for a flock file are: `flock.rules/` beside `flock.jsonl`. */
export const ownRulesFolder = (flockFile: string): string => `${flockFile.replace(/\.jsonl$/, '')}.rules`;

/**
 * The keeper's own rule files: `flock.rules/` beside `flock.jsonl`. Null where there is no such folder. Links are not
 * followed, and nothing else in the folder is touched.
 */
export const readOwnRules = (flockFile: string): OwnRuleFiles | null => {
  const folder = ownRulesFolder(flockFile);
  if (!existsSync(folder)) return null;
  const files: { file: string; text: string }[] = [];
  const refused: { file: string; why: string }[] = [];
  try {
    const below = entriesBelow(folder);
    refused.push(...below.refused);
    for (const { file, entry } of below.found.filter((each) => /\.ya?ml$/i.test(each.file))) {
      const size = entry.isFile() ? statSync(join(folder, file)).size : 0;
      if (!entry.isFile()) refused.push({ file, why: 'it is a link or no plain file' });
      else if (size > ownLimits.bytes) refused.push({ file, why: 'it is larger than 64 kilobytes' });
      else if (files.length === ownLimits.files) {
        refused.push({ file, why: `there are more than ${ownLimits.files} rule files` });
        break;
      } else files.push({ file, text: readFileSync(join(folder, file), 'utf8') });
    }
  } catch (error) {
    refused.push({
      file: '',
      why: error instanceof Error && 'code' in error ? String(error.code) : 'unreadable',
    });
  }
  return { folder, files, refused };
};

/** The text of a kept file; null where there is none that can be read. */
export const readKept = (path: string): string | null => {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return null;
  }
};

/** Keeps a text for its owner alone, whole or not at all; where that cannot be done it is let be, since it can be fetched again. */
export const keepText = (path: string, text: string): void => {
  try {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    writeFileSync(`${path}.new`, text, { mode: 0o600 });
    renameSync(`${path}.new`, path);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
  }
};

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
