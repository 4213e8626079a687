/** Which cells of a figure's table a value comes from, and what they are called. */
import type { Figure, FigureTable, Value } from '../types.ts';

/** The number keys of a table in rising order. */
export type SortKeys = (table: FigureTable) => readonly number[];

/** One number of a table; `name` is made of the keys that lead to it, such as `21` or `slow/56`; empty for a lone number. */
export interface Cell {
  readonly name: string;
  readonly value: number;
}

/** The cell that counts, or the two that a straight line runs between and how far along it the value lies, 0..1. */
export interface Entered {
  readonly cell: Cell;
  readonly next: Cell | null;
  readonly along: number;
}

/** The number that was entered; `valueIn` may put another in place of a cell's own. */
export const numberOf = (
  { cell, next, along }: Entered,
  valueIn: (cell: Cell) => number = ({ value }) => value,
): number => {
  const from = valueIn(cell);
  return next === null ? from : from + along * (valueIn(next) - from);
};

/** Index of the greatest key that is not above `at`; -1 when all are above it. */
const stepIn = (keys: readonly number[], at: number): number => {
  let step = -1;
  for (const key of keys) {
    if (key > at) break;
    step += 1;
  }
  return step;
};

const joined = (path: string, key: string): string => (path === '' ? key : `${path}/${key}`);

const cellIn = (table: FigureTable, key: number | undefined, path: string): Cell => {
  const value = table[String(key)];
  if (typeof value !== 'number')
    throw new Error(`a table on straight lines holds numbers only, not at ${key}`);
  return { name: joined(path, String(key)), value };
};

/** Straight line between the two keys around `at`; held level outside the table, so ask `keysOf` first where that matters. */
const lineIn = (table: FigureTable, keys: readonly number[], at: number, path: string): Entered => {
  const step = stepIn(keys, at);
  if (step === -1) return { cell: cellIn(table, keys[0], path), next: null, along: 0 };
  const [below, above] = [keys[step] ?? 0, keys[step + 1]];
  const cell = cellIn(table, below, path);
  if (above === undefined) return { cell, next: null, along: 0 };
  return { cell, next: cellIn(table, above, path), along: (at - below) / (above - below) };
};

/** The key under which a table has a name; a row named `other` stands for every name that the table does not have. */
export const keyNamed = (table: FigureTable, name: string): string | undefined =>
  Object.hasOwn(table, name) ? name : Object.hasOwn(table, 'other') ? 'other' : undefined;

/** Enters a table by axis values in the axes' own units; undefined where the table has nothing for them. */
export const enter = (
  figure: Figure,
  cell: number | FigureTable,
  at: readonly Value[],
  sortKeys: SortKeys,
  depth = 0,
  path = '',
): Entered | undefined => {
  if (typeof cell === 'number') return { cell: { name: path, value: cell }, next: null, along: 0 };
  const axis = figure.by[depth];
  const value = at[depth];
  if (axis === undefined || value === undefined)
    throw new Error(`figure ${figure.id} wants ${figure.by.length} axes`);
  if (axis.between === 'line') return lineIn(cell, sortKeys(cell), Number(value), path);
  const key =
    axis.between === 'name'
      ? keyNamed(cell, String(value))
      : String(sortKeys(cell)[stepIn(sortKeys(cell), Number(value))]);
  const branch = key === undefined ? undefined : cell[key];
  return key === undefined || branch === undefined
    ? undefined
    : enter(figure, branch, at, sortKeys, depth + 1, joined(path, key));
};

const namesBelow = (cell: number | FigureTable, path: string): string[] =>
  typeof cell === 'number'
    ? [path]
    : Object.entries(cell).flatMap(([key, inner]) => namesBelow(inner, joined(path, key)));

/** Names of all cells that a figure has or had, in the order of the file; none for a lone number. */
export const cellNamesOf = ({ by, values }: Pick<Figure, 'by' | 'values'>): readonly string[] =>
  by.length === 0 ? [] : [...new Set(values.flatMap(({ value }) => namesBelow(value, '')))];
