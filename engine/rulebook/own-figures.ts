/** What the keeper has set of the figures: which of it is in force for a group on a day, in the figure's own unit. */
import type { Day } from '../day.ts';
import type { Figure, OwnFigure, Units } from '../types.ts';
import { fromBase, toBase } from '../units.ts';

/** A number that the keeper put in place of a figure's, or of one cell of its table. */
export interface SetCell {
  /** Name of the cell; empty for a figure that is a lone number. */
  readonly cell: string;
  readonly value: number;
  readonly unit: string;
  readonly on: Day;
  readonly line: number;
}

/**
 * What is set of a figure on a day, oldest first: for all birds, and for this group alone. A lone number keeps the unit
 * it was given in; the cells of a table are in the table's, since a line may run from one of them to a published one.
 */
export const setCellsOf = (
  figure: Figure,
  own: readonly OwnFigure[],
  on: Day,
  group: string | null,
  units: Units,
): readonly SetCell[] =>
  own
    .filter((each) => each.figure === figure.id && each.on <= on)
    .filter((each) => each.group === undefined || each.group === group)
    // What is set for one group goes before what is set for all, whenever it was set.
    .sort((a, b) => Number(a.group !== undefined) - Number(b.group !== undefined))
    .map(({ at, quantity, on: since, line }) => ({
      cell: at ?? '',
      ...(at === undefined
        ? quantity
        : { value: fromBase(units, toBase(units, quantity), figure.unit), unit: figure.unit }),
      on: since,
      line,
    }));
