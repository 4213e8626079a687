/** Opens the flock file, or the demo where there is none, for one conversation. */
import type { Day } from '../../engine/day.ts';
import { type Engine, openFile, openText } from '../../engine/index.ts';
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
  /** Whether pictures must do with ASCII characters; they need not where nothing is said. */
  readonly isAscii?: boolean | undefined;
}

/** A conversation over the keeper's own file, which need not be there yet. */
export const openOwn = ({ book, lexicon, path, today, asOf, now, by, isAscii = false }: Opening): Flock => {
  let engine: Engine = openFile(book, path);
  return {
    book,
    lexicon,
    today,
    asOf,
    isAscii,
    canWrite: true,
    engine: () => engine,
    record: async (entries) => {
      const written = await engine.record(
        entries.map((entry) => ({ ...entry, written: now, ...(by === null ? {} : { by }) })),
        today,
      );
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
    record: () => Promise.resolve({ lines: [], first: 0, problems: [], isWritten: false }),
  };
};
