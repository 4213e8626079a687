/** Brooder set-up, troughs, room and lamps against the sources they come from. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import type { State } from '../../engine/types.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { worth } from '../helpers/work-out.ts';

const squareFoot = 0.09290304;
const inch = 0.0254;
const pound = 0.45359237;
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

const birds = (count: number, age: number, values: Readonly<Record<string, number>> = {}): State =>
  stateOf({
    on: addDays('2026-05-01', age),
    groups: [group({ boxed: count })],
    settings: Object.fromEntries(
      Object.entries(values).map(([what, value]) => [
        what,
        [{ what, value, on: '2026-05-01', line: 20, size: null, said: '' }],
      ]),
    ),
  });

describe('P. Clauer, Penn State Extension, Space Should Increase as Birds Grow, summary table (read)', () => {
  test('a brooder for 60 chicks: 15, 30 and 45 ft²', () => {
    const state = birds(60, 0, { 'chicks-coming': 60 });
    const floors = ['setup-floor', 'setup-floor-second-week', 'setup-floor-fourth-week'].map(
      (fact) => Math.round((Number(worth(state, fact, state.on, null)) / squareFoot) * 1e6) / 1e6,
    );
    expect(floors).toEqual([15, 30, 45]);
  });

  test('60 birds at 2 in each with both sides open: 60 in of trough', () => {
    expect(Number(worth(birds(60, 25), 'trough-length')) / inch).toBeCloseTo(60, 9);
  });
});

describe('United States Postal Service, facts page on shipping chicks (read)', () => {
  test('no feed and water for at most 72 hours after the hatch', () => {
    const state = stateOf({
      on: '2026-05-03',
      groups: [group({ hatched: '2026-05-01', hatchHour: '09:00', arrived: '2026-05-03' })],
    });
    expect(worth(state, 'drink-by', state.on, null)).toBe('2026-05-04T09:00');
  });
});

describe('National Organic Standards Board 2011, relayed: 1 ft² for up to 5 lb of birds', () => {
  test('a bird of 6.5 lb wants 1.3 ft²', () => {
    const state = birds(50, 50);
    const weighed = group({
      boxed: 50,
      weighings: [{ on: state.on, line: 5, mean: 6.5 * pound, count: 50, spread: null }],
    });
    const area = Number(worth({ ...state, groups: [weighed] }, 'room-by-weight')) / squareFoot;
    const live = Number(worth({ ...state, groups: [weighed] }, 'live-weight')) / pound;
    expect(area).toBeCloseTo(live / 5, 9);
    expect(area).toBeGreaterThan(1.25);
    expect(area).toBeLessThan(1.35);
  });
});

describe('Mississippi State University Extension, Water-Related Factors in Broiler Production (read)', () => {
  test('one nipple for 10 to 12 birds: 60 birds on 6', () => {
    expect(worth(birds(60, 25), 'nipples-wanted')).toBe(6);
  });
});

describe('chicks that one lamp of 250 W keeps warm, by the heat balance (derived) beside rules of thumb', () => {
  const lamps = (count: number, low: number): unknown =>
    worth(birds(count, 0, { 'room-temperature': celsius(low) }), 'lamps-by-balance');

  // R. Plamondon, Success with Baby Chicks, relayed at motherearthnews.com: 75 chicks at 50 °F, one less for each °F below.
  test.each([
    [75, 50],
    [60, 35],
    [45, 20],
    [5, -20],
  ])('%i chicks at %i °F: one', (count, low) => {
    expect(lamps(count, low)).toBe(1);
  });

  test.each([
    [150, 50],
    [120, 35],
  ])('%i chicks at %i °F: two', (count, low) => {
    expect(lamps(count, low)).toBe(2);
  });

  // Fact sheet of a hatchery, millerhatcheries.com, Brooding with Infra Red Lamps: one lamp for 50 chicks in a room of 75 °F.
  test('50 chicks in a room of 75 °F: one', () => {
    expect(lamps(50, 75)).toBe(1);
  });
});

describe('CIGR 2002, 10.62 W times live weight in kg to the power 0.75 (the equation from memory)', () => {
  test('a bird of 1 kg gives 10.62 W, half of it into the air of the brooder', () => {
    const state = birds(100, 30, { brooder: 10, 'room-temperature': 10 });
    const weighed = group({
      boxed: 100,
      weighings: [{ on: state.on, line: 5, mean: 1, count: 100, spread: null }],
    });
    const now = { ...state, groups: [weighed] };
    const live = Number(worth(now, 'live-weight'));
    // 100 birds over a loss of 15 W for each of 10 m² and degree.
    expect(Number(worth(now, 'own-warming'))).toBeCloseTo((100 * 10.62 * live ** 0.75 * 0.5) / 150, 9);
  });
});
