/** One dated copy of a flock in a folder of its own: its file and what stands beside it, read back before it counts. */
import { randomUUID } from 'node:crypto';
import {
  type Dirent,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import type { Day } from '../engine/day.ts';
import { adviceFileOf } from '../engine/index.ts';
import { ownRulesFolder } from './surroundings.ts';

export interface Copy {
  /** The folder that holds the copy and nothing else. */
  readonly folder: string;
  /** What is in it, by paths below it. */
  readonly files: readonly string[];
  /** What was left out of it, being a link or no plain file. */
  readonly leftOut: readonly string[];
}

/** Why there is no copy: there is no flock file, the system's code, or a file that did not read back as it was written. */
export type NoCopy = { readonly failed: 'no-flock' | 'not-the-same' | (string & {}); readonly path: string };

/** Far more than anybody makes in a day: a limit, so that the search for a free name ends. */
const mostOfOneDay = 1000;

const entriesBelow = (folder: string): readonly Dirent[] =>
  existsSync(folder) ? readdirSync(folder, { recursive: true, withFileTypes: true }) : [];

const codeOf = (error: unknown): string => {
  // Anything but an error of the system is a bug of ours and must not pass for a full disk.
  if (!(error instanceof Error && 'code' in error)) throw error;
  return String(error.code);
};

/** Copies one file for its owner alone; whether it then reads back as it was read. */
const isCopied = (from: string, to: string): boolean => {
  const bytes = readFileSync(from);
  mkdirSync(dirname(to), { recursive: true, mode: 0o700 });
  writeFileSync(to, bytes, { flag: 'wx', mode: 0o600, flush: true });
  return readFileSync(to).equals(bytes);
};

/** Gives a finished copy the first name of its day that is free; one that is there is never touched. */
const nameCopy = (made: string, wanted: string): string => {
  for (let n = 1; n <= mostOfOneDay; n += 1) {
    const name = n === 1 ? wanted : `${wanted}-${n}`;
    if (existsSync(name)) continue;
    try {
      renameSync(made, name);
      return name;
    } catch (error) {
      // Somebody else took that name in the meantime.
      if (!['EEXIST', 'ENOTEMPTY'].includes(codeOf(error))) throw error;
    }
  }
  throw Object.assign(new Error(`${wanted} has too many copies`), { code: 'EEXIST' });
};

/**
 * Copies the flock's file, its own rules and its log of advice into `flock-2026-05-14` inside a folder, or into
 * `flock-2026-05-14-2` where that is there already. Until all of it was read back it is called otherwise, so that what a
 * crash leaves behind does not look like a copy.
 */
export const takeCopy = (flockFile: string, into: string, today: Day): Copy | NoCopy => {
  if (!existsSync(flockFile)) return { failed: 'no-flock', path: flockFile };
  const beside = dirname(flockFile);
  const wanted = join(into, `${basename(flockFile).replace(/\.jsonl$/, '')}-${today}`);
  const making = `${wanted}.unfinished-${randomUUID()}`;
  let path = into;
  try {
    const below = entriesBelow(ownRulesFolder(flockFile)).filter((entry) => !entry.isDirectory());
    const pathOf = (entry: Dirent): string => join(entry.parentPath ?? entry.path, entry.name);
    const wantedFiles = [
      flockFile,
      ...[adviceFileOf(flockFile)].filter((each) => existsSync(each) && statSync(each).isFile()),
      ...below.filter((entry) => entry.isFile()).map(pathOf),
    ];
    mkdirSync(making, { recursive: true, mode: 0o700 });
    for (path of wantedFiles) {
      if (!isCopied(path, join(making, relative(beside, path)))) return { failed: 'not-the-same', path };
    }
    path = wanted;
    const named = (each: string): string => relative(beside, each);
    return {
      folder: nameCopy(making, wanted),
      files: wantedFiles.map(named),
      leftOut: below.filter((entry) => !entry.isFile()).map((entry) => named(pathOf(entry))),
    };
  } catch (error) {
    return { failed: codeOf(error), path };
  } finally {
    if (existsSync(making)) rmSync(making, { recursive: true, force: true });
  }
};
