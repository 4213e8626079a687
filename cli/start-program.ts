/** Loads the bundled program, with the code that an earlier run compiled where there is some that fits. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Script } from 'node:vm';
import type { KeptCode } from './kept-code.ts';

/** What the program is started for: each way runs other code, and only what was run is worth keeping. */
export type Way = 'answer' | 'chat';

/** Modules of Node's own that take long to load and that few answers use: fingerprints, compression, the network's names. */
const seldom: ReadonlySet<string> = new Set(['node:crypto', 'node:zlib', 'node:stream/consumers']);

/** A `require` that loads those when something of them is first used; the bundle asks for all modules at its start. */
const requireWhenUsed =
  (require: NodeJS.Require): ((name: string) => object) =>
  (name) =>
    seldom.has(name) ? new Proxy({}, { get: (_, key) => Reflect.get(require(name), key) }) : require(name);

/** A program that is running. */
export interface Started {
  /** How many earlier runs have left what they compiled; 0 where it had to be compiled from its text. */
  readonly runs: number;
  /** Keeps what this run has compiled so far, with what it was handed. */
  keep(): void;
}

/** Runs the program in `folder`. Compiled code of another Node is told by Node itself and left aside. */
export const startProgram = (folder: string, kept: KeptCode): Started => {
  const filename = `${folder}/program.js`;
  const gathered = kept.read();
  // The bundle is written in ASCII, so that its text is read at one byte a letter.
  const text = readFileSync(filename, 'latin1');
  const options = gathered === undefined ? { filename } : { filename, cachedData: gathered.code };
  const script = new Script(text, options);
  const program: (require: (name: string) => object, folder: string) => void = script.runInThisContext();
  program(requireWhenUsed(createRequire(filename)), folder);
  const runs = script.cachedDataRejected === true ? 0 : (gathered?.runs ?? 0);
  return { runs, keep: () => kept.write({ code: script.createCachedData(), runs: runs + 1 }) };
};
