/** Entries laid over a ledger for one answer: the file is not touched. */
import type { Moment } from '../types.ts';
import { lineOf, type NewEntry } from './append/try-append.ts';
import type { Book, Ledger } from './ledger.ts';
import { readLedgerText } from './read.ts';

/** What is believed at a moment when some entries more are taken to stand at the end of it. */
export interface LaidOver {
  readonly ledger: Ledger;
  readonly moment: Moment;
}

/** The ledger as believed at a moment, with these entries after it; as it is when there are none. */
export const layOver = (
  ledger: Ledger,
  moment: Moment,
  entries: readonly NewEntry[],
  book: Book,
): LaidOver => {
  if (entries.length === 0) return { ledger, moment };
  const lines = [...ledger.lines.slice(0, moment.lines ?? ledger.lines.length), ...entries.map(lineOf)];
  const text = `${lines.join('\n')}\n`;
  return { ledger: readLedgerText(ledger.file, text, book), moment: { ...moment, lines: null } };
};
