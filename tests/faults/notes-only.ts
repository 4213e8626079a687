/** What reading a file of nothing but notes needs to know: next to nothing, so that a writer begins quickly. */
import { readFileSync } from 'node:fs';
import { type Book, checkLedger, readLedgerFile } from '../../engine/ledger/index.ts';
import type { Entry } from '../../engine/types.ts';

export const today = '2026-05-02';

export const notesOnly: Book = {
  units: { shown: {}, list: [], byId: {}, base: {} },
  settings: {},
  figures: {},
};

export interface Notes {
  /** Writer and number of each note, in file order. */
  readonly notes: readonly string[];
  /** Codes of all that is wrong, each once. */
  readonly wrong: readonly string[];
  readonly text: string;
}

const noteOf = ({ by, fields }: Entry): string => `${by} ${fields.words}`;

/** Reads the notes in a file as the program would. */
export const readNotes = (path: string): Notes => {
  const ledger = readLedgerFile(path, notesOnly);
  const all = { asOf: null, lines: null };
  const problems = [...ledger.problems, ...checkLedger(ledger, all, notesOnly, { today, limits: {} })];
  return {
    notes: ledger.entries.map(noteOf),
    wrong: [...new Set(problems.map(({ code }) => code))],
    text: readFileSync(path, 'utf8'),
  };
};
