/** What a ledger would be with some entries more, before anything is written. */
import type { Problem } from '../../problem.ts';
import { checkLedger } from '../checks/index.ts';
import { inFileOrder } from '../finding.ts';
import { foldTo } from '../fold.ts';
import type { Book, Measure } from '../ledger.ts';
import { readLedgerText } from '../read.ts';
import { aSecondLater } from './second-later.ts';

/** An entry to be written: `kind`, `on`, the fields of its kind as they stand in the file, and `by` and `written` where known. */
export type NewEntry = Readonly<Record<string, unknown>> & { readonly kind: string; readonly on: string };

export interface Tried {
  /** The new lines, without line ends. */
  readonly lines: readonly string[];
  /** The line number of the first of them. */
  readonly first: number;
  /** Problems that the file does not have without them, in file order. */
  readonly problems: readonly Problem[];
}

/** The line an entry becomes: what happened and when first, who wrote it and when last. Never holds a line end. */
export const lineOf = ({ kind, on, by, written, ...fields }: NewEntry): string =>
  JSON.stringify({ kind, on, ...fields, by, written });

/** The lines of entries: the same thing told twice within a second is two things, so the second is stamped a second later. */
const distinctLines = (text: string, entries: readonly NewEntry[]): readonly string[] => {
  const taken = new Set(text.split('\n'));
  return entries.map((entry) => {
    let each = entry;
    while (taken.has(lineOf(each)) && typeof each.written === 'string') {
      const written = aSecondLater(each.written);
      if (written === null) break;
      each = { ...each, written };
    }
    const line = lineOf(each);
    taken.add(line);
    return line;
  });
};

const problemsOf = (file: string, text: string, book: Book, measure: Measure): readonly Problem[] => {
  const ledger = readLedgerText(file, text, book);
  const all = { on: measure.today, asOf: null, lines: null };
  return inFileOrder([...foldTo(ledger, all, book).problems, ...checkLedger(ledger, all, book, measure)]);
};

const identityOf = ({ code, at, data }: Problem): string => JSON.stringify([code, at.line, at.column, data]);

/** A text that ends its last line, so that what is added cannot run into a line that was cut off. */
const endLine = (text: string): string => (text === '' || text.endsWith('\n') ? text : `${text}\n`);

/** Reads, folds and checks the text of a file as it would be with these entries added, in this order and all at once. */
export const tryAppend = (
  file: string,
  text: string,
  entries: readonly NewEntry[],
  book: Book,
  measure: Measure,
): Tried => {
  const before = endLine(text);
  const lines = distinctLines(before, entries);
  const after = problemsOf(file, `${before}${lines.join('\n')}\n`, book, measure);
  const first = before.split('\n').length;
  if (after.length === 0) return { lines, first, problems: [] };
  const old = new Set(problemsOf(file, before, book, measure).map(identityOf));
  return { lines, first, problems: after.filter((problem) => !old.has(identityOf(problem))) };
};
