/** A figure at a moment: the dated value in force, entered by its axes. */
import type { Day } from '../day.ts';
import type { Figure, FigureTable, FigureUse, FigureValue, OwnFigure, Value } from '../types.ts';

/** The number keys of a table in rising order. */
export type SortKeys = (table: FigureTable) => readonly number[];

const sortedKeys: SortKeys = (table) =>
  Object.keys(table)
    .map(Number)
    .sort((one, other) => one - other);

/** Sorts the keys of each table once; make one for as long as a rulebook is open. */
export const rememberSorted = (): SortKeys => {
  const known = new WeakMap<FigureTable, readonly number[]>();
  return (table) => {
    const keys = known.get(table) ?? sortedKeys(table);
    known.set(table, keys);
    return keys;
  };
};

/** The value in force on a day: the last whose `from` is not later; the first for days before all of them. */
export const inForce = (figure: Figure, on: Day): FigureValue => {
  const [first] = figure.values;
  if (first === undefined) throw new Error(`figure ${figure.id} has no values`);
  let best = first;
  for (const each of figure.values) {
    // Whatever order the file has them in: until one has begun the earliest, from then on the latest that has.
    if (best.from > on ? each.from < best.from : each.from <= on && each.from >= best.from) best = each;
  }
  return best;
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

const numberIn = (table: FigureTable, key: number | undefined): number => {
  const cell = table[String(key)];
  if (typeof cell !== 'number')
    throw new Error(`a table on straight lines holds numbers only, not at ${key}`);
  return cell;
};

/** Straight line between the two keys around `at`; held level outside the table, so ask `keysOf` first where that matters. */
const lineIn = (table: FigureTable, keys: readonly number[], at: number): number => {
  const step = stepIn(keys, at);
  if (step === -1) return numberIn(table, keys[0]);
  const [below, above] = [keys[step] ?? 0, keys[step + 1]];
  const from = numberIn(table, below);
  if (above === undefined) return from;
  return from + ((at - below) / (above - below)) * (numberIn(table, above) - from);
};

/** The branch of a name axis; a row named `other` stands for every name that the table does not have. */
const named = (table: FigureTable, name: string): number | FigureTable | undefined =>
  Object.hasOwn(table, name) ? table[name] : Object.hasOwn(table, 'other') ? table.other : undefined;

const enter = (
  figure: Figure,
  cell: number | FigureTable,
  at: readonly Value[],
  depth: number,
  sortKeys: SortKeys,
): number | undefined => {
  if (typeof cell === 'number') return cell;
  const axis = figure.by[depth];
  const key = at[depth];
  if (axis === undefined || key === undefined) {
    throw new Error(`figure ${figure.id} wants ${figure.by.length} axes`);
  }
  if (axis.between === 'line') return lineIn(cell, sortKeys(cell), Number(key));
  const branch =
    axis.between === 'name'
      ? named(cell, String(key))
      : cell[String(sortKeys(cell)[stepIn(sortKeys(cell), Number(key))])];
  return branch === undefined ? undefined : enter(figure, branch, at, depth + 1, sortKeys);
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
  sortKeys: SortKeys = sortedKeys,
): FigureUse | undefined => {
  const set = own.findLast((each) => each.figure === figure.id && each.on <= on);
  if (set !== undefined) {
    const { value, unit } = set.quantity;
    return { id: figure.id, value, unit, from: set.on, source: `line ${set.line}`, own: true };
  }
  const { value: cell, from, source } = inForce(figure, on);
  const value = enter(figure, cell, at, 0, sortKeys);
  return value === undefined
    ? undefined
    : { id: figure.id, value, unit: figure.unit, from, source, own: false };
};

/** Keys of the innermost axis of a table below the named branches, in the axis's unit, lowest first. */
export const keysOf = (
  figure: Figure,
  on: Day,
  branch: readonly string[] = [],
  sortKeys: SortKeys = sortedKeys,
): readonly number[] => {
  let cell: number | FigureTable | undefined = inForce(figure, on).value;
  for (const name of branch) cell = typeof cell === 'object' ? named(cell, name) : undefined;
  if (typeof cell !== 'object') throw new Error(`figure ${figure.id} has no table at ${branch.join('/')}`);
  return sortKeys(cell);
};

/** Names along the first axis of a table, as the file has them. */
export const namesOf = (figure: Figure, on: Day): readonly string[] => {
  const { value } = inForce(figure, on);
  if (typeof value !== 'object') throw new Error(`figure ${figure.id} has no table`);
  return Object.keys(value);
};
