/** The state file → its entries, and everything that is wrong with it; one of the few files that touch the disk. */
import { readFileSync } from 'node:fs';
import type { Problem } from '../problem.ts';
import type { Entry } from '../types.ts';
import { ledgerCodes } from './codes.ts';
import type { Book, Ledger } from './ledger.ts';
import { readLine } from './read-line.ts';
import { touchesOf } from './touches.ts';

/** Splits a text into its lines, with either kind of line end and with or without a byte order mark. */
const linesOf = (text: string): readonly string[] => {
  const lines = text.replace(/^\ufeff/, '').split('\n');
  if (lines.at(-1) === '') lines.pop();
  return lines.map((line) => (line.endsWith('\r') ? line.slice(0, -1) : line));
};

/** Reads the text of a state file. `file` is its name for messages. Never throws; all problems are found at once. */
export const readLedgerText = (file: string, text: string, book: Book): Ledger => {
  const lines = linesOf(text);
  const entries: Entry[] = [];
  const problems: Problem[] = [];
  lines.forEach((raw, index) => {
    if (raw.trim() === '') return;
    const read = readLine(file, index + 1, raw, book);
    if (read.entry !== null) entries.push(read.entry);
    for (const problem of read.problems) problems.push(problem);
  });
  const last = problems.at(-1);
  const isLastTorn = last?.code === 'torn-line' && last.at.line === lines.length && !text.endsWith('\n');
  return { file, lines, entries, problems, ended: isLastTorn ? 'torn' : 'clean' };
};

/** The text of the state file, empty when there is none yet, or the system's code for why it cannot be read, such as `EACCES`. */
export const readText = (path: string): { readonly text: string } | { readonly failed: string } => {
  try {
    return { text: readFileSync(path, 'utf8') };
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
    return code === 'ENOENT' ? { text: '' } : { failed: code };
  }
};

/** The one problem of a file that cannot be read at all. */
export const unreadableFile = (path: string, cause: string): Problem => ({
  code: 'unreadable-file',
  at: { file: path, line: 1, column: 1 },
  raw: '',
  data: { cause },
  grave: ledgerCodes['unreadable-file'],
  touches: touchesOf(undefined, undefined),
});

/** Reads the state file at a path. A file that is not there yet is an empty ledger. */
export const readLedgerFile = (path: string, book: Book): Ledger => {
  const read = readText(path);
  if ('text' in read) return readLedgerText(path, read.text, book);
  return {
    file: path,
    lines: [],
    entries: [],
    problems: [unreadableFile(path, read.failed)],
    ended: 'clean',
  };
};
