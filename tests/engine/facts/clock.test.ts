import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addHours, hoursBetween, timeOn } from '../../../engine/facts/clock.ts';

test.each([
  ['2026-05-15', 7, '2026-05-15T07:00'],
  ['2026-05-15', 0, '2026-05-15T00:00'],
  ['2026-05-15', -1, '2026-05-14T23:00'],
  ['2026-05-15', 24.5, '2026-05-16T00:30'],
  ['2026-12-31', 25, '2027-01-01T01:00'],
])('%s and %d hours is %s', (day, hours, time) => {
  expect(timeOn(day, hours)).toBe(time);
});

test('a day of 24 hours also where summer time begins', () => {
  expect(addHours('2026-03-28T07:00', 24)).toBe('2026-03-29T07:00');
  expect(hoursBetween('2026-03-28T12:00', '2026-03-29T12:00')).toBe(24);
});

test('going on and looking back agree', () => {
  fc.assert(
    fc.property(fc.integer({ min: -5000, max: 5000 }), (quarters) => {
      const hours = quarters / 4;
      expect(hoursBetween('2026-05-15T06:30', addHours('2026-05-15T06:30', hours))).toBe(hours);
    }),
  );
});
