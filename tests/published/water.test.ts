/** Water against Poultry CRC (read) and Pesti and others 1985 (read), and a heat rule whose scale is from memory. */
import { expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import type { WeatherDay } from '../../engine/types.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { worth } from '../helpers/work-out.ts';

const gallon = 3.785411784;
const hatched = '2026-05-01';

const litres = (age: number, high: number): number => {
  const on = addDays(hatched, age);
  const day: WeatherDay = {
    on,
    low: null,
    high: { on, line: 2, value: high },
    rain: null,
    wind: null,
    humidity: null,
  };
  return Number(
    worth(stateOf({ on, groups: [group({ arrived: hatched })], weather: { [on]: day } }), 'water-per-day'),
  );
};

test('50 birds of 6 weeks drink 16.5 l (4.36 gal) at 20 °C: Poultry CRC, 330 l for 1,000', () => {
  expect(litres(42, 20)).toBeCloseTo(16.5, 9);
  expect(Math.abs(litres(42, 20) / gallon - 4.36)).toBeLessThan(0.02);
});

test('and 29.2 l (7.72 gal) at 32 °C: 7 % more for each °C above 21 (Fairchild and Ritz 2012, relayed; °C from memory)', () => {
  expect(Math.abs(litres(42, 32) / gallon - 7.72)).toBeLessThan(0.02);
});

test.each([
  [1, 65],
  [2, 120],
  [3, 180],
  [4, 245],
  [5, 290],
  [6, 330],
  [7, 355],
  [8, 370],
])('at the end of week %i it is %i l for 1,000 birds: Poultry CRC', (week, perThousand) => {
  expect(litres(week * 7, 20) * 20).toBeCloseTo(perThousand, 6);
});

test('never less than 5.28 ml a bird for each day of age: Pesti, Amato and Minear 1985, 11.09 l for 50 birds at 42 days', () => {
  const least = (age: number) => (50 * 5.28 * age) / 1000;
  expect(least(42)).toBeCloseTo(11.09, 2);
  for (let age = 1; age <= 56; age += 1) expect(litres(age, 20)).toBeGreaterThan(least(age));
});
