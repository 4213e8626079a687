/** A figure on a day: the value in force, the row of the table, and the keeper's own before all of them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figureAt, inForce, keysOf } from '../../../engine/rulebook/figures.ts';
import type { Figure, FigureTable, FigureValue } from '../../../engine/types.ts';

const since = (from: string, value: number | FigureTable): FigureValue => ({
  from,
  source: `source-of-${from}`,
  value,
  note: null,
});
const figure = (values: readonly FigureValue[], by: Figure['by'] = []): Figure => ({
  id: 'heat/floor',
  description: 'made up',
  unit: 'F',
  by,
  shown: null,
  values,
});
const used = (value: number, from = '2026-01-01') => ({
  id: 'heat/floor',
  value,
  unit: 'F',
  from,
  source: `source-of-${from}`,
  own: false,
});
const table = (value: FigureTable, by: Figure['by']): Figure => figure([since('2026-01-01', value)], by);
const on = '2026-05-14';
const age = (between: 'step' | 'line') => ({ fact: 'age', unit: 'day', between });
const kind = { fact: 'kind', unit: null, between: 'name' } as const;

describe('dated values', () => {
  const years = figure([since('2020-01-01', 1), since('2024-06-01', 2), since('2026-05-14', 3)]);

  test.each([
    ['2019-12-31', 1, '2020-01-01'],
    ['2020-01-01', 1, '2020-01-01'],
    ['2024-05-31', 1, '2020-01-01'],
    ['2024-06-01', 2, '2024-06-01'],
    ['2026-05-13', 2, '2024-06-01'],
    ['2026-05-14', 3, '2026-05-14'],
    ['2099-01-01', 3, '2026-05-14'],
  ])('on %s it is %d', (day, value, from) => {
    expect(figureAt(years, day)).toEqual(used(value, from));
  });

  test('count by their days, in whatever order they stand in the file', () => {
    const mixed = figure([...years.values].reverse());
    for (const day of ['2019-12-31', '2024-06-01', '2025-01-01', '2026-06-01']) {
      expect(figureAt(mixed, day)).toEqual(figureAt(years, day));
    }
  });

  test('of no number at all are a bug of the loading', () => {
    expect(() => inForce(figure([]), on)).toThrow('figure heat/floor has no values');
  });
});

describe('a table in steps', () => {
  const steps = table({ 14: 65, 21: 50, 28: 40 }, [age('step')]);

  test.each([
    [13.9, undefined],
    [14, 65],
    [20.9, 65],
    [21, 50],
    [28, 40],
    [99, 40],
  ])('at %d holds %j', (at, value) => {
    expect(figureAt(steps, on, [at])).toEqual(value === undefined ? undefined : used(value));
  });
});

describe('a table on straight lines', () => {
  const line = table({ 0: 10, 10: 30, 20: 0 }, [age('line')]);

  test.each([
    [-5, 10],
    [0, 10],
    [2.5, 15],
    [10, 30],
    [15, 15],
    [20, 0],
    [25, 0],
  ])('at %d gives %d', (at, value) => {
    expect(figureAt(line, on, [at])).toEqual(used(value));
  });

  test('never leaves the two rows it runs between', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 10, noNaN: true }), (at) => {
        const value = figureAt(line, on, [at])?.value ?? Number.NaN;
        expect(value).toBeGreaterThanOrEqual(10);
        expect(value).toBeLessThanOrEqual(30);
      }),
    );
  });
});

describe('a table by name', () => {
  const named = table({ fast: { 0: 1, 42: 2 }, other: { 0: 1, 63: 2 } }, [kind, age('step')]);

  test('takes the row of the name, or the row named other', () => {
    expect(figureAt(named, on, ['fast', 50])).toEqual(used(2));
    expect(figureAt(named, on, ['slow', 50])).toEqual(used(1));
    expect(figureAt(named, on, ['slow', 63])).toEqual(used(2));
  });

  test('without a row named other has nothing for a stranger, not even for a name that every object has', () => {
    const strict = table({ fast: 1 }, [kind]);
    expect(figureAt(strict, on, ['slow'])).toBeUndefined();
    expect(figureAt(strict, on, ['constructor'])).toBeUndefined();
    expect(figureAt(named, on, ['constructor', 50])).toEqual(used(1));
  });

  test('wants to know the name', () => {
    expect(() => figureAt(named, on)).toThrow('figure heat/floor wants 2 axes');
  });
});

describe("the keeper's own figure", () => {
  const published = figure([since('2026-01-01', 50)]);
  const own = (day: string, value: number, name = 'heat/floor') => ({
    figure: name,
    quantity: { value, unit: 'C' },
    reason: 'we are used to it',
    on: day,
    line: value,
  });

  test('outranks the published one from its day on, the latest first', () => {
    const set = [own('2026-05-01', 9), own('2026-05-10', 8), own('2026-05-10', 1, 'heat/other')];
    expect(figureAt(published, '2026-04-30', [], set)).toEqual(used(50));
    expect(figureAt(published, '2026-05-09', [], set)).toEqual({
      id: 'heat/floor',
      value: 9,
      unit: 'C',
      from: '2026-05-01',
      source: 'line 9',
      own: true,
    });
    expect(figureAt(published, on, [], set)).toMatchObject({ value: 8, source: 'line 8' });
  });
});

describe('the keys of a table', () => {
  test('are those of its last axis below the names, lowest first', () => {
    const named = table({ fast: { 56: 2, 7: 1, 14: 3 }, other: { '-5': 1, 84: 2 } }, [kind, age('line')]);
    expect(keysOf(named, on, ['fast'])).toEqual([7, 14, 56]);
    expect(keysOf(named, on, ['slow'])).toEqual([-5, 84]);
    expect(keysOf(named, on, ['constructor'])).toEqual([-5, 84]);
    expect(() => keysOf(figure([since('2026-01-01', 1)]), on)).toThrow('figure heat/floor has no table at ');
  });
});
