/** Wet bulb by Stull 2011 (equation read in pages that relay it), heat index by Tao and Xin 2003 (read), and rules of thumb beside them. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import { heatIndex, movingAirFactor, wetBulb } from '../../engine/facts/sums/heat-index.ts';
import { toBase } from '../../engine/units.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { weatherOf } from '../helpers/weather-of.ts';
import { bookForTests, worth } from '../helpers/work-out.ts';

const celsius = (fahrenheit: number): number => toBase(bookForTests.units, { value: fahrenheit, unit: 'F' });
const index = (fahrenheit: number, humidity: number): number =>
  heatIndex(celsius(fahrenheit), wetBulb(celsius(fahrenheit), humidity));

describe('wet bulb, Stull 2011', () => {
  test('90 °F at 60 % is 25.99 °C, or 78.8 °F', () => {
    const wet = wetBulb(celsius(90), 0.6);
    expect(Math.abs(wet - 25.99)).toBeLessThan(0.02);
    expect(Math.abs(wet * 1.8 + 32 - 78.8)).toBeLessThan(0.05);
  });

  test.each([
    [20, 0.5, 13.7],
    // One page prints 21.92 for this; the equation itself gives 22.30.
    [30, 0.5, 22.3],
  ])('%d °C at %d is %d °C', (air, humidity, wet) => {
    expect(Math.abs(wetBulb(air, humidity) - wet)).toBeLessThan(0.02);
  });
});

describe('temperature-humidity index, Tao and Xin 2003', () => {
  test.each([
    [90, 0.6, 31.29],
    [80, 0.8, 26.26],
    [95, 0.4, 33.43],
    [100, 0.3, 35.75],
  ])('%d °F at %d is %d °C', (air, humidity, thi) => {
    expect(Math.abs(index(air, humidity) - thi)).toBeLessThan(0.03);
  });

  test.each([
    [0.2, 34.35],
    [1, 31.29],
    [1.2, 30.96],
  ])('in air that moves at %d m/s 90 °F and 60 %% are like %d °C', (speed, thvi) => {
    expect(Math.abs(index(90, 0.6) * movingAirFactor(speed) - thvi)).toBeLessThan(0.03);
  });
});

describe('degrees Fahrenheit and percent added up (from memory), against 160', () => {
  // A bird of six weeks, well under 7 lb by the plan line.
  const on = addDays('2026-05-01', 42);
  const given = (air: number, humidity: number) =>
    stateOf({
      on,
      groups: [group({ whereabouts: [{ on: '2026-05-25', line: 2, place: 'pen', daysOnly: false }] })],
      weather: weatherOf({ [on]: { high: celsius(air), humidity } }),
    });

  test.each([
    [90, 0.6, 150],
    [80, 0.8, 160],
    [85, 0.85, 170],
    [100, 0.3, 130],
  ])('%d °F and %d make %d', (air, humidity, sum) => {
    expect(worth(given(air, humidity), 'heat-sum')).toBeCloseTo(sum, 9);
  });

  test('dry heat of 100 °F at 30 % alarms by the index, although the sum passes it over', () => {
    expect(worth(given(100, 0.3), 'heat-level')).toBe('danger');
    expect(worth(given(90, 0.6), 'heat-level')).toBe('danger');
    expect(worth(given(80, 0.8), 'heat-level')).toBe('watch');
  });
});

test('at 26 °C or less heat is very unlikely to tell on birds of less than 7 lb, at any humidity (a course text, read)', () => {
  const on = addDays('2026-05-01', 42);
  for (const humidity of [0.05, 0.3, 0.6, 0.9]) {
    const state = stateOf({ on, weather: weatherOf({ [on]: { high: 24.9, humidity } }) });
    expect(worth(state, 'heat-level')).toBe('calm');
  }
});
