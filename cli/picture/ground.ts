/** A map of the ground: a row for each strip, what was used of it, and where the pens stand. */
import { listed } from '../say/listed.ts';
import type { Draw } from './picture.ts';

/** Places are pen lengths along a strip, 0 where it is entered first. */
export interface GroundSeries {
  /** Pen lengths that a strip has room for. */
  readonly places: number;
  /** By strip, those used since the ground last rested. */
  readonly used: readonly number[];
  readonly pens: readonly {
    readonly groups: readonly string[];
    /** From 1. */
    readonly strip: number;
    readonly place: number;
    readonly away: boolean;
  }[];
}

const margin = 10;

export const drawGround: Draw<GroundSeries> = (_speech, { places, used, pens }, _group, { marks, width }) => {
  const cells = Math.min(places, width - margin);
  const cellOf = (place: number): number => Math.min(cells - 1, Math.floor((place * cells) / places));
  const rows = used.map((count, index) => {
    const row = Array.from({ length: cells }, (_, cell) =>
      cell < (count * cells) / places ? marks.light : marks.fresh,
    );
    // A strip walked on the way back is entered from its far end.
    for (const pen of pens.filter(({ strip }) => strip === index + 1)) row[cellOf(pen.place)] = marks.pen;
    const isBack = pens.some(({ strip, away }) => strip === index + 1 && !away);
    return `${`strip ${index + 1}`.padEnd(margin - 1)} ${(isBack ? row.reverse() : row).join('')}`;
  });
  const key = `${' '.repeat(margin)}${marks.pen} pen  ${marks.light} used  ${marks.fresh} fresh`;
  const where = pens.map(
    ({ groups, strip, place }) => `the ${listed(groups)} on strip ${strip}, place ${place + 1}`,
  );
  const freshLeft = used.reduce((sum, count) => sum + places - count, 0);
  const says = `The ground: ${used.length} strips of ${places} places each, ${freshLeft} of them fresh${where.length === 0 ? '' : `; ${listed(where)}`}.`;
  return { lines: [...rows, key], says };
};
