/** Reading, converting and comparing quantities over the closed list of units. Inside the engine all numbers are in base units. */
import type { Quantity, Unit, Units } from './types.ts';

/** The unit with this id, or undefined. */
export const unitOf = (units: Units, id: string): Unit | undefined =>
  Object.hasOwn(units.byId, id) ? units.byId[id] : undefined;

const known = (units: Units, id: string): Unit => {
  const unit = unitOf(units, id);
  if (unit === undefined) throw new Error(`no such unit: ${id}`);
  return unit;
};

/** A quantity in the base unit of its dimension. The unit must be on the list. */
export const toBase = (units: Units, quantity: Quantity): number => {
  const unit = known(units, quantity.unit);
  return (quantity.value + unit.offset) * unit.factor;
};

/** A base number in another unit of the same dimension. */
export const fromBase = (units: Units, base: number, unitId: string): number => {
  const unit = known(units, unitId);
  return base / unit.factor - unit.offset;
};

/** The dimension a unit measures, such as `mass`. */
export const dimensionOf = (units: Units, unitId: string): string => known(units, unitId).dimension;

/** The base unit of a dimension. */
export const baseUnitOf = (units: Units, dimension: string): Unit => {
  const unit = Object.hasOwn(units.base, dimension) ? units.base[dimension] : undefined;
  if (unit === undefined) throw new Error(`no base unit for ${dimension}`);
  return unit;
};

/** The unit that a base number is shown in, by the place's system. */
export const shownUnit = (units: Units, unitId: string, system: 'us' | 'metric'): string =>
  units.shown[dimensionOf(units, unitId)]?.[system] ?? unitId;

/**
 * Reads `25 lb` or `-3.5 °C` as it stands in a file: one number, then one unit by id or by any of its words.
 * Undefined when it is not that. Case only tells apart what would be one otherwise: `W` is watts, `w` weeks.
 */
export const readQuantity = (units: Units, text: string): Quantity | undefined => {
  const found = /^\s*([-+−]?\d+(?:\.\d+)?)\s*(\S.*?)?\s*$/u.exec(text);
  if (found === null || found[2] === undefined) return undefined;
  const value = Number((found[1] as string).replace('−', '-'));
  const word = found[2].toLowerCase();
  const unit =
    unitOf(units, found[2]) ??
    units.list.find((each) => each.id.toLowerCase() === word || each.words.includes(word));
  return unit === undefined || !Number.isFinite(value) ? undefined : { value, unit: unit.id };
};
