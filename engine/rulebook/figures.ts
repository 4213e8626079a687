/** A figure at a moment: the dated value in force, entered by its axes. */
import type { Day } from '../day.ts';
import type { Figure, FigureTable, FigureUse, FigureValue, OwnFigure, Value } from '../types.ts';

/** The value in force on a day: the last whose `from` is not later; the first for days before all of them. */
export const inForce = (figure: Figure, on: Day): FigureValue => {
  const values = figure.values.toSorted((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
  const current = values.findLast((each) => each.from <= on) ?? values[0];
  if (current === undefined) throw new Error(`figure ${figure.id} has no values`);
  return current;
};

const stepIn = (keys: readonly number[], at: number): number | undefined => {
  const below = keys.filter((key) => key <= at);
  return below.length === 0 ? undefined : Math.max(...below);
};

const numberIn = (table: FigureTable, key: number): number => {
  const cell = table[String(key)];
  if (typeof cell !== 'number')
    throw new Error(`a table on straight lines holds numbers only, not at ${key}`);
  return cell;
};

/** Straight line between the two keys around `at`; held level outside the table, so ask `keysOf` first where that matters. */
const lineIn = (table: FigureTable, keys: readonly number[], at: number): number => {
  const below = stepIn(keys, at);
  if (below === undefined) return numberIn(table, Math.min(...keys));
  const above = keys.filter((key) => key > at);
  if (above.length === 0) return numberIn(table, below);
  const next = Math.min(...above);
  const from = numberIn(table, below);
  return from + ((at - below) / (next - below)) * (numberIn(table, next) - from);
};

/** The row of a name; a row named `other` stands for every name that the table does not have. */
const rowOf = (table: FigureTable, name: string): number | FigureTable | undefined =>
  table[[name, 'other'].find((each) => Object.hasOwn(table, each)) ?? ''];

const enter = (figure: Figure, cell: number | FigureTable, at: readonly Value[]): number | undefined => {
  if (typeof cell === 'number') return cell;
  const depth = figure.by.length - at.length;
  const axis = figure.by[depth];
  const key = at[0];
  if (axis === undefined || key === undefined)
    throw new Error(`figure ${figure.id} wants ${figure.by.length} axes`);
  if (axis.between === 'name') {
    const branch = rowOf(cell, String(key));
    return branch === undefined ? undefined : enter(figure, branch, at.slice(1));
  }
  const keys = Object.keys(cell).map(Number);
  if (axis.between === 'line') return lineIn(cell, keys, Number(key));
  const step = stepIn(keys, Number(key));
  const branch = step === undefined ? undefined : cell[String(step)];
  return branch === undefined ? undefined : enter(figure, branch, at.slice(1));
};

/**
 * The figure's number at these axis values (in the axes' own units), in the figure's own unit, with where it comes from.
 * Undefined where the table has nothing for them. A figure that the keeper set outranks the published one.
 */
export const figureAt = (
  figure: Figure,
  on: Day,
  at: readonly Value[] = [],
  own: readonly OwnFigure[] = [],
): FigureUse | undefined => {
  const set = own.filter((each) => each.figure === figure.id && each.on <= on).at(-1);
  if (set !== undefined) {
    return {
      id: figure.id,
      value: set.quantity.value,
      unit: set.quantity.unit,
      from: set.on,
      source: `line ${set.line}`,
      own: true,
    };
  }
  const current = inForce(figure, on);
  const value = enter(figure, current.value, at);
  return value === undefined
    ? undefined
    : { id: figure.id, value, unit: figure.unit, from: current.from, source: current.source, own: false };
};

/** Keys of the innermost axis of a table below the named branches, in the axis's unit, lowest first. */
export const keysOf = (figure: Figure, on: Day, branch: readonly string[] = []): readonly number[] => {
  let cell: number | FigureTable | undefined = inForce(figure, on).value;
  for (const name of branch) cell = typeof cell === 'object' ? rowOf(cell, name) : undefined;
  if (typeof cell !== 'object') throw new Error(`figure ${figure.id} has no table at ${branch.join('/')}`);
  return Object.keys(cell)
    .map(Number)
    .sort((a, b) => a - b);
};
