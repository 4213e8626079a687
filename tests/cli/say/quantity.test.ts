/** Numbers, units and days in words: the only place where anything is rounded. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inShownUnit, sayAsTyped, sayDay, sayTime, sayValue } from '../../../cli/say/quantity.ts';
import type { Speech } from '../../../cli/say/speech.ts';
import { fromBase, unitOf } from '../../../engine/units.ts';
import { shipped } from '../../helpers/flock-of.ts';

const us: Speech = { book: shipped, system: 'us', currency: '$', today: '2026-05-08' };
const metric: Speech = { ...us, system: 'metric', currency: '€' };

describe('a value', () => {
  test.each([
    [10, 'C', '50 °F', '10 °C'],
    [-3.4, 'C', '26 °F', '−3 °C'],
    [-0.2, 'C', '32 °F', '0 °C'],
    [5, 'C-degree', '9 °F', '5 °C'],
    [1, 'kg', '2.2 lb', '1 kg'],
    [0.4, 'kg', '0.88 lb', '0.4 kg'],
    [0, 'kg', '0 lb', '0 kg'],
    [453.59237, 'kg', '1000 lb', '453.6 kg'],
    [2, 'mm', '0.08 in', '2 mm'],
    [10, 'm/s', '22 mph', '36 km/h'],
    [1, 'bird', '1 bird', '1 bird'],
    [0, 'bird', '0 birds', '0 birds'],
    [12, 'bird', '12 birds', '12 birds'],
    [1, 'day', '1 day', '1 day'],
    [21, 'day', '21 days', '21 days'],
    [12.5, 'money', '$12.50', '€12.50'],
    [1, 'money/kg', '$0.45 per lb', '€1.00 per kg'],
  ])('%d %s is said as %s or %s', (value, unit, inUs, inMetric) => {
    expect([sayValue(us, { value, unit }), sayValue(metric, { value, unit })]).toEqual([inUs, inMetric]);
  });

  test.each([
    [0.5, 'ratio', '50%'],
    [0.096, 'ratio', '9.6%'],
    [0.0999, 'ratio', '10%'],
    [1, 'ratio', '100%'],
    [0, 'ratio', '0%'],
    [2.5, 'percent', '2.5%'],
    [12.5, 'percent', '13%'],
    [-0.02, 'ratio', '−2%'],
  ])('%d %s is said as %s', (value, unit, said) => {
    expect(sayValue(us, { value, unit })).toBe(said);
  });

  test.each([
    [1, 'nearly all'],
    [0.9, '9 in 10'],
    [0.75, '3 in 4'],
    [2 / 3, '2 in 3'],
    [0.5, '1 in 2'],
    [0.34, '1 in 3'],
    [0.025, '1 in 40'],
    [1 / 350, '1 in 350'],
    [1e-9, 'fewer than 1 in 1000'],
    [0, 'none'],
  ])('odds of %d are said as %s', (value, said) => {
    const odds = unitOf(shipped.units, 'odds')?.id ?? 'odds';
    expect(sayValue(us, { value, unit: odds })).toBe(said);
  });

  test('without a unit is said as it is, a number to two places', () => {
    const said = [null, true, false, 'slow', 1.239, 3, -0.001].map((value) =>
      sayValue(us, { value, unit: null }),
    );
    expect(said).toEqual(['not known', 'yes', 'no', 'slow', '1.24', '3', '0']);
  });

  test('that is a day or a time is said as one', () => {
    expect(sayValue(us, { value: '2026-05-16', unit: 'date' })).toBe('Saturday 16 May');
    expect(sayValue(us, { value: '2026-05-16T07:30', unit: 'date-time' })).toBe('Saturday 16 May at 07:30');
    expect(sayValue(us, { value: null, unit: 'date' })).toBe('not known');
  });

  test('is shown in the unit of its fact or figure where that has one of its own', () => {
    const words = {
      id: 'trough',
      name: 'trough',
      how: '',
      ask: null,
      tell: null,
      fixed: false,
      supposedBy: [],
      shown: { us: 'in', metric: 'cm' },
    };
    const book = { ...shipped, facts: { ...shipped.facts, trough: words } };
    expect(sayValue({ ...us, book }, { value: 1.27, unit: 'm' }, 'trough')).toBe('50 in');
    expect(sayValue({ ...metric, book }, { value: 1.27, unit: 'm' }, 'trough')).toBe('127 cm');
    expect(sayValue({ ...metric, book }, { value: 1.27, unit: 'm' })).toBe('1.3 m');
  });

  test('is never off by more than half of its last place', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), fc.boolean(), (value, isUs) => {
        const speech = isUs ? us : metric;
        const said = Number(sayValue(speech, { value, unit: 'kg' }).replace('−', '-').split(' ')[0]);
        const exact = isUs ? fromBase(shipped.units, value, 'lb') : value;
        expect(Math.abs(said - exact)).toBeLessThanOrEqual(Math.abs(exact) < 1 ? 0.00500001 : 0.0500001);
      }),
    );
  });

  test('keeps all its places where it is not to be read by people', () => {
    expect(inShownUnit(us, 1, 'kg')).toEqual({ value: 1 / 0.45359237, unit: 'lb' });
    expect(inShownUnit(metric, 1, 'kg')).toEqual({ value: 1, unit: 'kg' });
  });
});

describe('a day', () => {
  test.each([
    ['2026-05-08', '2026-05-08', 'Friday 8 May'],
    ['2026-12-31', '2026-05-08', 'Thursday 31 December'],
    ['2027-01-01', '2026-12-31', 'Friday 1 January 2027'],
    ['2024-02-29', '2026-05-08', 'Thursday 29 February 2024'],
  ])('%s on %s is %s', (day, today, said) => {
    expect(sayDay(day, today)).toBe(said);
  });

  test('with a time has it behind', () => {
    expect(sayTime('2027-05-16T07:00', '2026-05-08')).toBe('Sunday 16 May 2027 at 07:00');
  });
});

test('a quantity is read back as it was typed, in its own unit, nothing rounded', () => {
  const said = [
    { value: 50, unit: 'lb' },
    { value: 3.125, unit: 'kg' },
    { value: 1, unit: 'bag' },
    { value: 2, unit: 'bag' },
    { value: 60, unit: 'percent' },
    { value: 38, unit: 'F' },
    { value: 4, unit: 'stone' },
  ].map((quantity) => sayAsTyped(us, quantity));
  expect(said).toEqual(['50 lb', '3.125 kg', '1 bag', '2 bags', '60%', '38 °F', '4 stone']);
});
