/** Factors and fixed points of units against published definitions; the source stands beside each. */
import { expect, test } from 'vitest';
import { fromBase, toBase } from '../../engine/units.ts';
import { rulebook } from '../helpers/rulebook-of.ts';

const { units } = rulebook().book;

/** A value of one unit in another of its dimension. */
const inUnit = (value: number, from: string, to: string): number =>
  fromBase(units, toBase(units, { value, unit: from }), to);

// NIST Handbook 44, appendix C, as cited in rules/units.yaml: exact by definition. The numbers here are from memory.
test.each([
  [1, 'lb', 'g', 453.59237],
  [16, 'oz', 'lb', 1],
  [1, 'in', 'cm', 2.54],
  [12, 'in', 'ft', 1],
  [1, 'ft2', 'm2', 0.09290304],
  [43_560, 'ft2', 'ac', 1],
  [1, 'ha', 'm2', 10_000],
  [1, 'gal', 'l', 3.785411784],
  [4, 'qt', 'gal', 1],
  [128, 'fl-oz', 'gal', 1],
  [1728 / 231, 'gal', 'ft3', 1],
  [1, 'mph', 'km/h', 1.609344],
  [1, 'km/h', 'm/s', 1 / 3.6],
  [1, 'inch-of-rain', 'mm', 25.4],
  [7, 'day', 'week', 1],
  [24, 'h', 'day', 1],
  [100, 'percent', 'ratio', 1],
])('%d %s in %s is %d', (value, from, to, wanted) => {
  expect(inUnit(value, from, to)).toBeCloseTo(wanted, 9);
});

// Fixed points of the two scales: ice, steam, where they meet, and the body heat of a hen (about 106 °F; from memory).
test.each([
  [32, 0],
  [212, 100],
  [-40, -40],
  [106, 41.11111111],
])('%d °F is %d °C', (fahrenheit, celsius) => {
  expect(inUnit(fahrenheit, 'F', 'C')).toBeCloseTo(celsius, 8);
});

test('a change of temperature has no zero point to be shifted by', () => {
  expect(inUnit(10, 'F-degree', 'C-degree')).toBeCloseTo(5.5555555556, 9);
  expect(inUnit(0, 'F-degree', 'C-degree')).toBe(0);
});

// Worked out from the definitions above.
test.each([
  [1, 'lb/ft2', 'kg/m2', 0.45359237 / 0.09290304],
  [100, 'lb/ac', 'kg/ha', (45.359237 / 4046.8564224) * 10_000],
  [1, 'money/lb', 'money/kg', 1 / 0.45359237],
  [1, 'per-F-degree', 'per-C-degree', 1.8],
])('%d %s in %s is %d', (value, from, to, wanted) => {
  expect(inUnit(value, from, to)).toBeCloseTo(wanted, 9);
});
