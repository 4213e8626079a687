/** Quantities as they stand in the file: `25 lb`, a list of them, or a size such as `4 ft x 6 ft`. */
import type { Quantity, Units } from '../../types.ts';
import { dimensionOf, readQuantity, toBase } from '../../units.ts';
import { nearestOf } from '../nearest.ts';
import { boundsOf, type Field, isWithin, type ReadField, type Reading, wrong, wrongType } from './field.ts';

const NUMBER_AND_UNIT = /^\s*([-+−]?\d+(?:\.\d+)?)\s*(\S.*?)\s*$/u;

/**
 * Some units share their sign across dimensions (`in` of length, `in` of rain), so a unit of the wanted dimension is
 * tried under its sign when the plain reading gives another dimension.
 */
const readAs = (units: Units, text: string, dimension: string): Quantity | undefined => {
  const plain = readQuantity(units, text);
  if (plain !== undefined && dimensionOf(units, plain.unit) === dimension) return plain;
  const [, number, sign] = NUMBER_AND_UNIT.exec(text) ?? [];
  const unit = units.list.find((each) => each.dimension === dimension && each.one.trim() === sign);
  return (unit && readQuantity(units, `${number} ${unit.id}`)) ?? plain;
};

const mendUnit = (units: Units, text: string, dimension: string): string | null => {
  const [, number, word] = NUMBER_AND_UNIT.exec(text) ?? [];
  if (number === undefined || word === undefined) return null;
  const words = units.list.filter((unit) => unit.dimension === dimension).flatMap((unit) => unit.words);
  const near = nearestOf(word, words);
  return near === null ? null : `${number} ${near}`;
};

const readOne = (text: string, path: string, field: Field, units: Units): Reading => {
  const dimension = field.dimension ?? '';
  const quantity = readAs(units, text, dimension);
  if (quantity === undefined) {
    const suggestion = mendUnit(units, text, dimension);
    return wrong('bad-quantity', path, {
      found: text,
      wants: dimension,
      ...(suggestion === null ? {} : { suggestion }),
    });
  }
  const is = dimensionOf(units, quantity.unit);
  if (is !== dimension) return wrong('wrong-dimension', path, { found: text, wants: dimension, is });
  if (!isWithin(toBase(units, quantity), field)) {
    return wrong('out-of-range', path, { found: text, wants: dimension, ...boundsOf(field) });
  }
  return { value: quantity };
};

export const readOneQuantity: ReadField = (value, field, around) =>
  typeof value === 'string'
    ? readOne(value, field.name, field, around.book.units)
    : wrongType(field, around, field.dimension ?? '');

/** Reads a list of at least one quantity; every bad one is found, not only the first. */
export const readQuantities: ReadField = (value, field, around) => {
  if (!Array.isArray(value)) return wrongType(field, around, 'list');
  if (value.length === 0) return wrong('out-of-range', field.name, { found: '[]', wants: 'list', min: 1 });
  const readings = value.map((each: unknown, index) =>
    readOneQuantity(each, { ...field, name: `${field.name}.${index}` }, around),
  );
  const findings = readings.flatMap((reading) => ('wrong' in reading ? reading.wrong : []));
  if (findings.length > 0) return { wrong: findings };
  return { value: readings.flatMap((reading) => ('value' in reading ? [reading.value as Quantity] : [])) };
};

/** Reads length by width, `4 ft x 6 ft` or `4 x 6 ft`, as a pair of lengths. */
export const readSize: ReadField = (value, field, around) => {
  if (typeof value !== 'string') return wrongType(field, around, 'size');
  const bad = wrong('bad-quantity', field.name, { found: value, wants: 'size' });
  const [first, second, ...rest] = value.split(/\s*[x×]\s*/u);
  if (first === undefined || second === undefined || rest.length > 0) return bad;
  const unit = NUMBER_AND_UNIT.exec(second)?.[2];
  const width = readQuantity(around.book.units, second);
  const length = readQuantity(around.book.units, /^\s*[\d.]+\s*$/.test(first) ? `${first} ${unit}` : first);
  if (length === undefined || width === undefined) return bad;
  const pair = [length, width];
  const other = pair
    .map((each) => dimensionOf(around.book.units, each.unit))
    .find((each) => each !== 'length');
  if (other !== undefined)
    return wrong('wrong-dimension', field.name, { found: value, wants: 'size', is: other });
  if (pair.some((each) => each.value <= 0)) {
    return wrong('out-of-range', field.name, { found: value, wants: 'size', min: 0 });
  }
  return { value: pair };
};
