/** A figure on a day: the value in force, the row of the table, and the keeper's own before all of them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellNamesOf } from '../../../engine/rulebook/cells.ts';
import { figureAt, inForce, keysOf } from '../../../engine/rulebook/figures.ts';
import { type SetCell, setCellsOf } from '../../../engine/rulebook/own-figures.ts';
import type { Figure, FigureTable, FigureValue, OwnFigure } from '../../../engine/types.ts';
import { smallRulebook } from '../../helpers/small-rulebook.ts';

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
  const set = (day: string, line: number, value: number, cell = '', unit = 'C'): SetCell => ({
    cell,
    value,
    unit,
    on: day,
    line,
  });
  const before = { value: 50, unit: 'F', from: '2026-01-01', source: 'source-of-2026-01-01' };

  test('outranks the published one, the latest first, which stays beside it', () => {
    expect(figureAt(published, on, [], [])).toEqual(used(50));
    expect(figureAt(published, on, [], [set('2026-05-01', 9, 9), set('2026-05-10', 12, 8)])).toEqual({
      id: 'heat/floor',
      value: 8,
      unit: 'C',
      from: '2026-05-10',
      source: 'line 12',
      own: true,
      published: before,
    });
  });

  test('of one step of a table leaves the other steps as they were published', () => {
    const steps = table({ 14: 65, 21: 50, 28: 40 }, [age('step')]);
    const own = [set('2026-05-01', 7, 55, '21', 'F')];
    expect(figureAt(steps, on, [20], own)).toEqual(used(65));
    expect(figureAt(steps, on, [27], own)).toEqual({
      id: 'heat/floor',
      value: 55,
      unit: 'F',
      from: '2026-05-01',
      source: 'line 7',
      own: true,
      published: before,
    });
    expect(figureAt(steps, on, [28], own)).toEqual(used(40));
  });

  test('of one point of a line bends it on both sides as far as the next points', () => {
    const line = table({ 0: 0, 10: 100, 20: 200, 30: 300 }, [age('line')]);
    const own = [set('2026-05-01', 7, 150, '10', 'F')];
    const at = [0, 5, 10, 15, 20, 25, 99].map((x) => figureAt(line, on, [x], own));
    expect(at.map((use) => [use?.value, use?.own])).toEqual([
      [0, false],
      [75, true],
      [150, true],
      [175, true],
      [200, false],
      [250, false],
      [300, false],
    ]);
    expect(at[1]?.published).toEqual({ ...before, value: 50 });
  });

  test('of a row that stands for all other names counts for them alone', () => {
    const named = table({ fast: { 7: 1 }, other: { 7: 2 } }, [kind, age('step')]);
    const own = [set('2026-05-01', 7, 9, 'other/7', 'F')];
    expect(figureAt(named, on, ['fast', 8], own)?.value).toBe(1);
    expect(figureAt(named, on, ['slow', 8], own)?.value).toBe(9);
    expect(figureAt(named, on, ['slow', 3], own)).toBeUndefined();
  });

  test('from a rule file shows the published one beside it, and is itself outranked by an entry', () => {
    const own = { ...figure([since('2026-02-01', 60)]), own: { published } };
    const used60 = { ...used(60, '2026-02-01'), own: true, published: before };
    expect(figureAt(own, on)).toEqual(used60);
    expect(figureAt(own, on, [], [set('2026-05-01', 9, 9)])).toEqual({
      id: 'heat/floor',
      value: 9,
      unit: 'C',
      from: '2026-05-01',
      source: 'line 9',
      own: true,
      published: before,
    });
    expect(figureAt({ ...own, own: { published: null } }, on)).toEqual({
      ...used(60, '2026-02-01'),
      own: true,
    });
  });
});

describe('what is set of a figure', () => {
  const { units } = smallRulebook().book;
  const steps = table({ 14: 65, 21: 50 }, [age('step')]);
  const told = (more: Partial<OwnFigure>): OwnFigure => ({
    figure: 'heat/floor',
    quantity: { value: 10, unit: 'C' },
    reason: null,
    on: '2026-05-01',
    line: 3,
    ...more,
  });

  test('is in force from its day on, for its own figure, and for its own group', () => {
    const own = [
      told({ line: 1, on: '2026-05-20' }),
      told({ line: 2, figure: 'heat/other' }),
      told({ line: 3, group: 'reds' }),
      told({ line: 4 }),
    ];
    const lines = (group: string | null): number[] =>
      setCellsOf(figure([]), own, on, group, units).map(({ line }) => line);
    expect([lines('reds'), lines('whites'), lines(null)]).toEqual([[4, 3], [4], [4]]);
  });

  test('keeps the unit it was given in, but for a cell, which takes that of its table', () => {
    const [lone] = setCellsOf(figure([]), [told({})], on, null, units);
    const [cell] = setCellsOf(steps, [told({ at: '21' })], on, null, units);
    expect(lone).toEqual({ cell: '', value: 10, unit: 'C', on: '2026-05-01', line: 3 });
    // 10 °C are 50 °F by the definition of the scale.
    expect(cell).toEqual({ cell: '21', value: expect.closeTo(50, 9), unit: 'F', on: '2026-05-01', line: 3 });
  });
});

test('the cells of a figure are named by the keys that lead to them, those of all its dated values', () => {
  const two = figure(
    [since('2026-01-01', { fast: { 7: 1, 14: 2 } }), since('2026-05-01', { fast: { 7: 3 }, slow: { 7: 4 } })],
    [kind, age('step')],
  );
  expect(cellNamesOf(two)).toEqual(['fast/7', 'fast/14', 'slow/7']);
  expect(cellNamesOf(figure([since('2026-01-01', 1)]))).toEqual([]);
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
