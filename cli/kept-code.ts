/** Compiled code of the program, kept in the user's cache folder from one run to the next. */
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, isAbsolute, join } from 'node:path';

/** Whose code is kept where. */
export interface Keeping {
  /** The program's cache folder; it need not be there yet. */
  readonly cache: string;
  /** Folders of the user's of which one has to be there, or nothing is kept: none is made for an account without a home. */
  readonly within: readonly string[];
  /** Number of the user; undefined where the system has none. */
  readonly user: number | undefined;
}

/** Compiled code, and how many runs it was gathered from: each asks something else and adds what that has run. */
export interface Gathered {
  readonly code: Buffer;
  readonly runs: number;
}

export interface KeptCode {
  /** What was kept for this program, way and Node; undefined where there is nothing that can be trusted. */
  read(): Gathered | undefined;
  /** Keeps code for the next run; where that cannot be done nothing is said, since the program runs without. */
  write(gathered: Gathered): void;
}

/** Code of nobody else is run: whoever may write a file that is not the user's own could have anything done in the user's name. */
const isOwn = (path: string, user: number | undefined): boolean => {
  if (user === undefined) return true;
  const { uid, mode } = statSync(path);
  return uid === user && (mode & 0o022) === 0;
};

const isMissing = (error: unknown): boolean => error instanceof Error && 'code' in error;

/**
 * Node runs compiled code as it finds it, and damaged code takes the whole process down. So it is kept twice over, one copy
 * behind the other, and is only good where both are the same: a tenth of a millisecond, where loading a checksum takes two.
 */
const doubled = ({ code, runs }: Gathered): Buffer => Buffer.concat([code, code, Buffer.of(runs)]);

const halved = (kept: Buffer): Gathered | undefined => {
  const [length, runs] = [(kept.length - 1) / 2, kept.at(-1)];
  if (runs === undefined || length < 1 || !Number.isInteger(length)) return undefined;
  const code = kept.subarray(0, length);
  return code.equals(kept.subarray(length, -1)) ? { code, runs } : undefined;
};

/**
 * The code kept under a name.
 * @param build what tells this build of the program from any other; code of other builds is cleared away on writing
 * @param name of the way of starting and the Node it was compiled by, such as `answer-v20.20.2-x64`
 */
export const keptCode = ({ cache, within, user }: Keeping, build: string, name: string): KeptCode => {
  const folder = join(cache, 'code');
  const file = join(folder, `${build}-${name}`);
  return {
    read: () => {
      try {
        return isAbsolute(cache) && isOwn(folder, user) && isOwn(file, user)
          ? halved(readFileSync(file))
          : undefined;
      } catch (error) {
        if (!isMissing(error)) throw error;
        return undefined;
      }
    },
    write: (gathered) => {
      try {
        if (!isAbsolute(cache) || !within.some((each) => existsSync(each))) return;
        mkdirSync(dirname(folder), { recursive: true, mode: 0o700 });
        if (!existsSync(folder)) mkdirSync(folder, { mode: 0o700 });
        if (!isOwn(folder, user)) return;
        for (const other of readdirSync(folder))
          if (!other.startsWith(`${build}-`)) rmSync(join(folder, other), { force: true });
        writeFileSync(`${file}.new`, doubled(gathered), { mode: 0o600 });
        renameSync(`${file}.new`, file);
      } catch (error) {
        if (!isMissing(error)) throw error;
      }
    },
  };
};
