/** Which cell of a figure's table some words mean: by a name in them, by the kind of the birds, or by an amount such as an age. */
import { cellNamesOf } from '../../engine/rulebook/cells.ts';
import type { Figure, FigureAxis, Quantity } from '../../engine/types.ts';
import { dimensionOf, fromBase, readQuantity, shownUnit, toBase } from '../../engine/units.ts';
import { type Flock, momentOn, systemOf } from './flock.ts';

/** Amounts in the words with the units they were said in; degrees without a letter are those of the place. */
export const amountsIn = (flock: Flock, words: string): readonly Quantity[] => {
  const { units } = flock.book;
  const system = systemOf(flock.engine().state(momentOn(flock, flock.today)));
  return [...words.matchAll(/(\d+(?:\.\d+)?)\s*-?\s*°?\s*([a-z%²³]+)/gi)].flatMap(
    ([, number = '', unit = '']) => {
      const name = /^deg(rees?)?$/i.test(unit) ? shownUnit(units, 'C', system) : unit;
      return readQuantity(units, `${number} ${name}`) ?? [];
    },
  );
};

/** What there is to tell a cell by. */
export interface Telling {
  readonly words: string;
  readonly amounts: readonly Quantity[];
  /** Kind of the birds that it is set for. */
  readonly kind: string | undefined;
  /** Whether a number without a unit is the key: only where the words do nothing but name a cell. */
  readonly isBare: boolean;
}

const numberOn = (
  flock: Flock,
  { unit }: FigureAxis,
  { words, amounts, isBare }: Telling,
): number | undefined => {
  const { units } = flock.book;
  const amount =
    unit === null
      ? undefined
      : amounts.find((each) => dimensionOf(units, each.unit) === dimensionOf(units, unit));
  if (amount !== undefined && unit !== null) return fromBase(units, toBase(units, amount), unit);
  const bare = isBare && amounts.length === 0 ? /^\D*(\d+(?:\.\d+)?)\D*$/.exec(words)?.[1] : undefined;
  return bare === undefined ? undefined : Number(bare);
};

const keyOn = (
  flock: Flock,
  axis: FigureAxis,
  keys: readonly string[],
  told: Telling,
): string | undefined => {
  if (axis.between === 'name') {
    const said = told.words.toLowerCase().split(/[^a-z0-9-]+/);
    return keys.find((key) => said.includes(key)) ?? keys.find((key) => key === told.kind);
  }
  const at = numberOn(flock, axis, told);
  if (at === undefined) return undefined;
  const sorted = keys.toSorted((a, b) => Number(a) - Number(b));
  // A step holds until the next one; of a line only the point itself can be set.
  return axis.between === 'step'
    ? (sorted.findLast((key) => Number(key) <= at + 1e-9) ?? sorted[0])
    : sorted.find((key) => Math.abs(Number(key) - at) < 0.5);
};

/** The name of the cell, or undefined where the words leave it open. */
export const cellMeant = (flock: Flock, figure: Figure, told: Telling): string | undefined => {
  let cells = cellNamesOf(figure).map((name) => name.split('/'));
  const path: string[] = [];
  for (const [depth, axis] of figure.by.entries()) {
    const key = keyOn(flock, axis, [...new Set(cells.map((cell) => cell[depth] ?? ''))], told);
    if (key === undefined) return undefined;
    path.push(key);
    cells = cells.filter((cell) => cell[depth] === key);
  }
  return path.join('/');
};
