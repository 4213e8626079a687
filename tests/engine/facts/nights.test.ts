/** Nights and rain as far as they are on record, and what is said aloud where they are not. */
import { describe, expect, test } from 'vitest';
import type { Day } from '../../../engine/day.ts';
import type { WeatherDay } from '../../../engine/types.ts';
import { stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

type Told = Partial<Record<'low' | 'high' | 'rain' | 'wind', number>>;

/** Days with what was told of them; the line is the day of the month, so that entries can be told apart. */
const weather = (days: Readonly<Record<Day, Told>>): Readonly<Record<Day, WeatherDay>> =>
  Object.fromEntries(
    Object.entries(days).map(([on, told]) => {
      const noted = (value: number | undefined) =>
        value === undefined ? null : { on, line: Number(on.slice(8)), value };
      const { low, high, rain, wind } = told;
      return [
        on,
        { on, low: noted(low), high: noted(high), rain: noted(rain), wind: noted(wind), humidity: null },
      ];
    }),
  );
const on = '2026-05-08';
const given = (days: Readonly<Record<Day, Told>>) => stateOf({ on, weather: weather(days) });

/** A flock's fact with what it rests on. */
const told = (days: Readonly<Record<Day, Told>>, fact: string, day = on) => {
  const { value, missing, entries, assumed } = workOut(given(days), day).step(fact, null);
  return { value, missing, lines: entries.map(({ line }) => line), assumed };
};
const noMore = { missing: [], assumed: [] };

describe('the coldest of the coming nights', () => {
  test('is the lowest of this night and the two after it', () => {
    const days = {
      '2026-05-07': { low: -5 },
      [on]: { low: 9 },
      '2026-05-09': { low: 4 },
      '2026-05-10': { low: 7 },
      '2026-05-11': { low: -9 },
    };
    expect(told(days, 'night-low')).toEqual({ value: 4, lines: [8, 9, 10], ...noMore });
  });

  test('says how many nights are taken to be no colder', () => {
    expect(told({ '2026-05-09': { low: 4 } }, 'night-low')).toEqual({
      value: 4,
      lines: [9],
      missing: [],
      assumed: [{ id: 'nights-no-colder', group: null, values: { nights: { value: 2, unit: 'day' } } }],
    });
  });

  test('is asked for when none of them is on record, however well the last one is', () => {
    expect(told({ '2026-05-07': { low: 4 } }, 'night-low')).toEqual({
      value: null,
      lines: [],
      missing: [{ fact: 'night-low', group: null }],
      assumed: [],
    });
  });

  test('goes on for a later day as the last three on record were, and says so', () => {
    const days = {
      '2026-05-05': { low: 1 },
      '2026-05-06': { low: 6 },
      '2026-05-07': { low: 5 },
      [on]: { low: 8 },
    };
    expect(told(days, 'night-low', '2026-05-20')).toEqual({
      value: 5,
      lines: [8, 7, 6],
      missing: [],
      assumed: [
        {
          id: 'nights-as-before',
          group: null,
          values: { low: { value: 5, unit: 'C' }, from: { value: '2026-05-09', unit: 'date' } },
        },
      ],
    });
  });

  test('is not known for a later day either when the last one on record is more than a week old', () => {
    expect(told({ '2026-05-01': { low: 4 } }, 'night-low', '2026-05-20').value).toBe(4);
    expect(told({ '2026-04-30': { low: 4 } }, 'night-low', '2026-05-20')).toEqual({
      value: null,
      lines: [],
      missing: [{ fact: 'night-low', group: null }],
      assumed: [],
    });
  });
});

test.each([
  ['tonight-low', 'low'],
  ['today-high', 'high'],
] as const)('%s is that of the day alone', (fact, measure) => {
  expect(told({ [on]: { [measure]: 12 } }, fact)).toEqual({ value: 12, lines: [8], ...noMore });
  expect(told({ '2026-05-09': { [measure]: 12 } }, fact)).toEqual({
    value: null,
    lines: [],
    missing: [{ fact, group: null }],
    assumed: [],
  });
});

describe('rain and wind', () => {
  test('to come are the most of this day and the two after it', () => {
    const days = {
      '2026-05-07': { rain: 30, wind: 30 },
      [on]: { rain: 2 },
      '2026-05-10': { rain: 5, wind: 8 },
      '2026-05-11': { rain: 40, wind: 40 },
    };
    expect(told(days, 'rain-soon')).toEqual({ value: 5, lines: [8, 10], ...noMore });
    expect(told(days, 'wind-soon')).toEqual({ value: 8, lines: [10], ...noMore });
  });

  test('are none where none is on record; of rain that is said', () => {
    expect(told({}, 'rain-soon')).toEqual({
      value: 0,
      lines: [],
      missing: [],
      assumed: [{ id: 'no-rain-on-record', group: null, values: {} }],
    });
    expect(told({ [on]: { rain: 0 } }, 'rain-soon')).toEqual({ value: 0, lines: [8], ...noMore });
    expect(worth(given({}), 'wind-soon')).toBe(0);
  });

  test('lately are those of today and yesterday', () => {
    const days = {
      '2026-05-06': { rain: 9 },
      '2026-05-07': { rain: 3 },
      [on]: { rain: 1 },
      '2026-05-09': { rain: 20 },
    };
    expect(told(days, 'rain-lately')).toEqual({ value: 3, lines: [8, 7], ...noMore });
    expect(worth(given({}), 'rain-lately')).toBe(0);
  });
});
