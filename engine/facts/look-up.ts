/** Figures as they count on one day for one group: the published number, the keeper's own before it, a supposed one before both. */
import { figureAt } from '../rulebook/figures.ts';
import { setCellsOf } from '../rulebook/own-figures.ts';
import type { Figure, FigureUse, Rulebook, Value } from '../types.ts';
import { fromBase, toBase } from '../units.ts';
import type { Setup } from './workings.ts';

/** A figure as used, with its number in base units. */
export interface FigureInBase {
  readonly use: FigureUse;
  readonly base: number;
}

/** The figure with this id. A name that is not there is a mistake in a model, and throws. */
export const figureNamed = ({ figures }: Rulebook, id: string): Figure => {
  const figure = figures[id];
  if (figure === undefined) throw new Error(`no such figure: ${id}`);
  return figure;
};

/** Looks figures up by axis values in the axes' own units; undefined where the table has nothing for them. */
export const openFigures =
  ({ state, book, on, supposing, sortKeys }: Setup) =>
  (id: string, at: readonly Value[], group: string | null): FigureInBase | undefined => {
    const figure = figureNamed(book, id);
    const set = setCellsOf(figure, state.ownFigures, on, group, book.units);
    const use = figureAt(figure, on, at, set, sortKeys);
    if (use === undefined) return undefined;
    const supposed = supposing.find((each) => 'figure' in each.what && each.what.figure === id);
    if (supposed === undefined) return { use, base: toBase(book.units, use) };
    const [by, now] = [Number(supposed.value), toBase(book.units, use)];
    const base = supposed.adds ? now + by : supposed.times === true ? now * by : by;
    return { use: { ...use, value: fromBase(book.units, base, use.unit) }, base };
  };
