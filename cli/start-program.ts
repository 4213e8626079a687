/** Loads the bundled program, with the code that was compiled ahead where there is some that fits. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Script } from 'node:vm';

/** What the program is started for: each way runs other code, and only what was run is worth compiling ahead. */
export type Way = 'answer' | 'chat';

/** The file with the code that was compiled ahead for a way. */
export const compiledFile = (folder: string, way: Way): string => `${folder}/${way}.code`;

/** Absent where the program was copied without it: then the text is compiled, which takes longer and does the same. */
const compiledFor = (folder: string, way: Way): Buffer | undefined => {
  try {
    return readFileSync(compiledFile(folder, way));
  } catch {
    return undefined;
  }
};

/** Modules of Node's own that take long to load and that few answers use: fingerprints, compression, the network's names. */
const seldom: ReadonlySet<string> = new Set(['node:crypto', 'node:zlib', 'node:stream/consumers']);

/** A `require` that loads those when something of them is first used; the bundle asks for all modules at its start. */
const requireWhenUsed =
  (require: NodeJS.Require): ((name: string) => object) =>
  (name) =>
    seldom.has(name) ? new Proxy({}, { get: (_, key) => Reflect.get(require(name), key) }) : require(name);

/**
 * Runs the program in `folder`. Compiled code of another Node, or for another text, is told by Node itself and left aside.
 * @returns the script, from which its compiled code can be taken once it has run
 */
export const startProgram = (folder: string, way: Way): Script => {
  const filename = `${folder}/program.js`;
  const cachedData = compiledFor(folder, way);
  // The bundle is written in ASCII, so that its text is read at one byte a letter.
  const text = `(function(require,__dirname){${readFileSync(filename, 'latin1')}\n})`;
  const script = new Script(text, { filename, ...(cachedData === undefined ? {} : { cachedData }) });
  const program: (require: (name: string) => object, folder: string) => void = script.runInThisContext();
  program(requireWhenUsed(createRequire(filename)), folder);
  return script;
};
