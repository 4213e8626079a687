/** The size of a terminal's window, as the terminal tells it. */

/** In characters. */
export interface Window {
  readonly columns: number;
  readonly rows: number;
}

/** Columns and rows of a terminal; the usual size where it does not tell. */
export const sizeOf = ({ columns, rows }: Partial<Window>): Window => ({
  columns: columns === undefined || columns === 0 ? 80 : columns,
  rows: rows === undefined || rows === 0 ? 24 : rows,
});
