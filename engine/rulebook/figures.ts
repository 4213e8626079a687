/** A figure at a moment: the dated value in force, entered by its axes. */
import type { Day } from '../day.ts';
import type { Figure, FigureTable, FigureUse, FigureValue, PublishedValue, Value } from '../types.ts';
import { type Cell, type Entered, enter, keyNamed, numberOf, type SortKeys } from './cells.ts';
import type { SetCell } from './own-figures.ts';

export type { SortKeys } from './cells.ts';

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

/** What a figure says at these axis values, as published or as in a rule file of the keeper's. */
const inBook = (
  figure: Figure,
  on: Day,
  at: readonly Value[],
  sortKeys: SortKeys,
): { readonly entered: Entered; readonly use: FigureUse } | undefined => {
  const { value: table, from, source } = inForce(figure, on);
  const entered = enter(figure, table, at, sortKeys);
  if (entered === undefined) return undefined;
  const use = { id: figure.id, value: numberOf(entered), unit: figure.unit, from, source };
  if (figure.own === undefined) return { entered, use: { ...use, own: false } };
  const before = figure.own.published === null ? undefined : inBook(figure.own.published, on, at, sortKeys);
  return {
    entered,
    use: { ...use, own: true, ...(before === undefined ? {} : { published: asPublished(before.use) }) },
  };
};

/** A use without what only a use has, to stand beside the one that took its place. */
const asPublished = ({ value, unit, from, source }: FigureUse): PublishedValue => ({
  value,
  unit,
  from,
  source,
});

/**
 * The figure's number at these axis values (in the axes' own units), in the figure's own unit, with where it comes from.
 * Undefined where the table has nothing for them.
 * @param set what the keeper set of this figure, in force, oldest first; a cell of a table in the figure's own unit
 */
export const figureAt = (
  figure: Figure,
  on: Day,
  at: readonly Value[] = [],
  set: readonly SetCell[] = [],
  sortKeys: SortKeys = sortedKeys,
): FigureUse | undefined => {
  const found = inBook(figure, on, at, sortKeys);
  if (found === undefined || set.length === 0) return found?.use;
  const { entered, use } = found;
  const setOf = ({ name }: Cell): SetCell | undefined => set.findLast((each) => each.cell === name);
  const counted = [entered.cell, ...(entered.next === null || entered.along === 0 ? [] : [entered.next])];
  const last = counted
    .flatMap((cell) => setOf(cell) ?? [])
    .sort((a, b) => a.line - b.line)
    .at(-1);
  if (last === undefined) return use;
  return {
    id: figure.id,
    value: numberOf(entered, (cell) => setOf(cell)?.value ?? cell.value),
    unit: last.unit,
    from: last.on,
    source: `line ${last.line}`,
    own: true,
    published: use.published ?? asPublished(use),
  };
};

/** Keys of the innermost axis of a table below the named branches, in the axis's unit, lowest first. */
export const keysOf = (
  figure: Figure,
  on: Day,
  branch: readonly string[] = [],
  sortKeys: SortKeys = sortedKeys,
): readonly number[] => {
  let cell: number | FigureTable | undefined = inForce(figure, on).value;
  for (const name of branch) {
    const key: string | undefined = typeof cell === 'object' ? keyNamed(cell, name) : undefined;
    cell = typeof cell === 'object' && key !== undefined ? cell[key] : undefined;
  }
  if (typeof cell !== 'object') throw new Error(`figure ${figure.id} has no table at ${branch.join('/')}`);
  return sortKeys(cell);
};

/** Names along the first axis of a table, as the file has them. */
export const namesOf = (figure: Figure, on: Day): readonly string[] => {
  const { value } = inForce(figure, on);
  if (typeof value !== 'object') throw new Error(`figure ${figure.id} has no table`);
  return Object.keys(value);
};
