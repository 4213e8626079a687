/** Opens the flock file, or the demo where there is none, for one conversation. */
import type { Day } from '../../engine/day.ts';
import { type Appended, type Engine, mayWrite, openFile, openText } from '../../engine/index.ts';
import type { Problem } from '../../engine/problem.ts';
import type { Rulebook } from '../../engine/types.ts';
import { demoLedger } from '../demo/demo.ts';
import type { Lexicon } from '../understand/lexicon.ts';
import type { Flock } from './flock.ts';

export interface Opening {
  readonly book: Rulebook;
  readonly lexicon: Lexicon;
  readonly path: string;
  readonly today: Day;
  readonly asOf: Day | null;
  /** Local date and time with offset, for the entries to be written. */
  readonly now: string;
  readonly by: string | null;
  /** What is wrong with the keeper's own rule files, where there are any. */
  readonly ownProblems?: readonly Problem[] | undefined;
  /** Where the rules that gave advice are kept; left out where no advice is to be noted. */
  readonly rulesFolder?: string | undefined;
  /** Fetches a forecast over the network; left out where none is to be fetched. */
  readonly fetchForecast?: Flock['fetchForecast'];
  /** Whether the file is only to be read, as on a helper's machine; left out where its own permissions decide. */
  readonly isReadOnly?: boolean | undefined;
  /** Whether pictures must do with ASCII characters; they need not where nothing is said. */
  readonly isAscii?: boolean | undefined;
}

/** Why a flock file is only to be read and what to do about it; undefined where it may be written to. */
const whyReadOnly = (path: string, isReadOnly: boolean): string | undefined => {
  if (isReadOnly)
    return 'Nothing is written, as PENSIDE_READ_ONLY is set here. Tell it where the flock file is kept, or take that setting away.';
  return mayWrite(path)
    ? undefined
    : `Nothing is written, as ${path} may only be read here. Tell it where the flock file is kept, or allow writing to it.`;
};

const nothingWritten: Appended = { lines: [], first: 0, problems: [], isWritten: false };

/** A conversation over the keeper's own file, which need not be there yet. */
export const openOwn = ({
  book,
  lexicon,
  path,
  today,
  asOf,
  now,
  by,
  ownProblems,
  rulesFolder,
  fetchForecast,
  isReadOnly = false,
  isAscii = false,
}: Opening): Flock => {
  const readOnly = whyReadOnly(path, isReadOnly);
  let engine: Engine = openFile(book, path);
  const told: string[] = [];
  return {
    book,
    lexicon,
    today,
    asOf,
    isAscii,
    canWrite: readOnly === undefined,
    readOnly,
    ownProblems,
    fetchForecast,
    // Advice is noted in a file beside that of the flock.
    advice: rulesFolder === undefined || readOnly !== undefined ? undefined : { rulesFolder, at: now },
    engine: () => engine,
    told: () => told,
    record: async (entries) => {
      if (readOnly !== undefined) return nothingWritten;
      const written = await engine.record(
        entries.map((entry) => ({ ...entry, written: now, ...(by === null ? {} : { by }) })),
        today,
      );
      told.push(...written.lines);
      engine = openFile(book, path);
      return written;
    },
  };
};

/** A conversation over the demo flock; nothing can be written. */
export const openDemo = ({
  book,
  lexicon,
  today,
  asOf,
  isAscii = false,
}: Pick<Opening, 'book' | 'lexicon' | 'today' | 'asOf' | 'isAscii'>): Flock => {
  const engine = openText(book, 'demo', demoLedger(today));
  return {
    book,
    lexicon,
    today,
    asOf,
    isAscii,
    canWrite: false,
    engine: () => engine,
    record: () => Promise.resolve(nothingWritten),
  };
};
