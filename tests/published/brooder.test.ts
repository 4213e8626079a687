/** Brooder warmth and floor against the tables they come from. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { worth } from '../helpers/work-out.ts';

const sixty = (age: number) => stateOf({ on: addDays('2026-05-01', age), groups: [group({ boxed: 60 })] });
const inFahrenheit = (age: number, fact: string): number =>
  Math.round(Number(worth(sixty(age), fact)) * 1.8 + 32);

describe('P. Clauer, Penn State Extension, Space Should Increase as Birds Grow, summary table', () => {
  test.each([
    ['1', 3, 15],
    ['2', 7, 30],
    ['3', 20, 30],
    ['4, read as 3 to 5', 21, 45],
    ['6, read as 5 to 8', 35, 60],
  ])('60 chicks in week %s (day %i) need %i ft² of floor', (_week, age, feet) => {
    expect(Number(worth(sixty(age), 'floor-needed')) / 0.09290304).toBeCloseTo(feet, 10);
  });

  test.each([
    [0, 92, 95],
    [7, 85, 90],
    [21, 80, 85],
    [35, 70, 80],
  ])('on day %i the warm spot may have %i to %i °F', (age, low, high) => {
    expect([inFahrenheit(age, 'brooder-target-low'), inFahrenheit(age, 'brooder-target-high')]).toEqual([
      low,
      high,
    ]);
  });
});

describe('University of Florida IFAS Extension, relayed', () => {
  test('95 °F in the first week, 5 °F less each week, 70 °F in the sixth', () => {
    const weeks = [0, 1, 2, 3, 4, 5].map((week) => inFahrenheit(week * 7, 'brooder-target'));
    expect(weeks).toEqual([95, 90, 85, 80, 75, 70]);
  });

  test('95 °F is 35.0 °C', () => {
    expect(Number(worth(sixty(0), 'brooder-target'))).toBeCloseTo(35, 9);
  });
});

describe('heat lamps, common practice in mornings of the 30s °F', () => {
  test('about 50 chicks have two lamps of 250 watt', () => {
    const low = { on: '2026-05-04', line: 2, value: (35 - 32) / 1.8 };
    const weather = {
      '2026-05-04': { on: '2026-05-04', low, high: null, rain: null, wind: null, humidity: null },
    };
    expect(worth(stateOf({ on: '2026-05-04', weather }), 'lamps-needed')).toBe(2);
  });
});
