/** Rows as comma-separated values after RFC 4180, with nothing in them that a spreadsheet would take for a formula. */
import { clean } from './clean.ts';

/** What stands in one cell; null for nothing. */
export type Cell = string | number | boolean | null;

/** By column; a column that a row has not is empty. */
export type Row = Readonly<Record<string, Cell>>;

// Spreadsheets work out a cell that begins so, some of them also after blanks and with the wide forms of the signs.
const formula = /^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]/;
const wantsQuotes = /[",]|^\s|\s$/;

/** A quote before the text is what spreadsheets themselves put there to say that it is text. */
const textCell = (text: string): string => {
  const shown = clean(text);
  const safe = formula.test(shown) ? `'${shown}` : shown;
  return wantsQuotes.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

const cellOf = (cell: Cell): string => {
  if (cell === null) return '';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  return typeof cell === 'number' ? String(cell) : textCell(cell);
};

/**
 * A row of names and then one for each of `rows`. Each ends in a carriage return, so that with the line end that is written
 * after it, it ends as the standard has it. A line end within a text becomes a blank: one row of the list is one line.
 */
export const sayCsv = (columns: readonly string[], rows: readonly Row[]): readonly string[] =>
  [columns.map(textCell), ...rows.map((row) => columns.map((name) => cellOf(row[name] ?? null)))].map(
    (cells) => `${cells.join(',')}\r`,
  );
