/** Units: what is on the list can be read, converted and shown; what is not is refused. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  baseUnitOf,
  dimensionOf,
  fromBase,
  readQuantity,
  shownUnit,
  toBase,
  unitOf,
} from '../../engine/units.ts';
import { rulebook } from '../helpers/rulebook-of.ts';

const { units } = rulebook().book;
const ids = units.list.map((unit) => unit.id);

test('what goes into base units comes out again', () => {
  fc.assert(
    fc.property(fc.constantFrom(...ids), fc.double({ min: -1e6, max: 1e6, noNaN: true }), (unit, value) => {
      const back = fromBase(units, toBase(units, { value, unit }), unit);
      expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
    }),
  );
});

test('more in any unit is more in base units', () => {
  fc.assert(
    fc.property(fc.constantFrom(...ids), fc.integer(), fc.integer({ min: 1 }), (unit, value, more) => {
      expect(toBase(units, { value: value + more, unit })).toBeGreaterThan(toBase(units, { value, unit }));
    }),
  );
});

describe('a quantity in a file', () => {
  test.each([
    ['25 lb', { value: 25, unit: 'lb' }],
    ['25lb', { value: 25, unit: 'lb' }],
    ['  25   LB ', { value: 25, unit: 'lb' }],
    ['4 pounds', { value: 4, unit: 'lb' }],
    ['-3.5 °C', { value: -3.5, unit: 'C' }],
    ['−3.5 C', { value: -3.5, unit: 'C' }],
    ['+7 F', { value: 7, unit: 'F' }],
    ['0.5 square feet', { value: 0.5, unit: 'ft2' }],
    ['60 %', { value: 60, unit: 'percent' }],
    ['2 ft²', { value: 2, unit: 'ft2' }],
    ['250 W', { value: 250, unit: 'W' }],
    ['3 w', { value: 3, unit: 'week' }],
  ])('%j is read', (text, quantity) => {
    expect(readQuantity(units, text)).toEqual(quantity);
  });

  test.each([
    '25',
    'lb',
    '',
    ' ',
    'lb 25',
    '25 firkin',
    '1e3 lb',
    '1,000 lb',
    '5 to 6 lb',
    '1/2 lb',
    '.5 lb',
    'NaN lb',
    '--5 lb',
  ])('%j is not one', (text) => {
    expect(readQuantity(units, text)).toBeUndefined();
  });

  test('is read from every word of its unit, as that unit', () => {
    for (const { id, words } of units.list) {
      for (const word of [id, ...words]) {
        expect([word, readQuantity(units, `3 ${word}`)]).toEqual([word, { value: 3, unit: id }]);
      }
    }
  });
});

describe('the list', () => {
  test('gives each dimension one base unit, and shows it only in units of its own', () => {
    const dimensions = [...new Set(units.list.map((unit) => unit.dimension))];
    for (const dimension of dimensions) {
      const base = baseUnitOf(units, dimension);
      expect([base.dimension, base.factor, base.offset]).toEqual([dimension, 1, 0]);
    }
    for (const [dimension, { us, metric }] of Object.entries(units.shown)) {
      expect([us, metric].map((unit) => dimensionOf(units, unit))).toEqual([dimension, dimension]);
    }
  });

  test('shows a dimension in the units of the place, and one without a choice as it is', () => {
    expect([
      shownUnit(units, 'kg', 'us'),
      shownUnit(units, 'oz', 'metric'),
      shownUnit(units, 'bird', 'us'),
    ]).toEqual(['lb', 'kg', 'bird']);
  });

  test('has no unit that nobody declared', () => {
    expect(unitOf(units, 'firkin')).toBeUndefined();
    expect(() => toBase(units, { value: 1, unit: 'firkin' })).toThrow('no such unit: firkin');
    expect(() => baseUnitOf(units, 'luck')).toThrow('no base unit for luck');
  });
});
