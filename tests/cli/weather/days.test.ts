/** Hours gathered into days: which night is whose, and what is left out where hours are lacking. */
import { describe, expect, test } from 'vitest';
import { gatherDays } from '../../../cli/weather/days.ts';
import type { Hour } from '../../../cli/weather/provider.ts';
import { airAt, localHour } from '../../helpers/recorded-forecasts.ts';

const plausible = { coldest: -50, hottest: 55, mostRain: 500, strongestWind: 67 };
const gathering = { now: '2026-05-14T07:12:00-04:00', days: 2, nightBegins: 18, nightEnds: 9, plausible };

const hour = (n: number, more: Partial<Hour> = {}): Hour => ({
  at: localHour(n),
  temperature: airAt(n),
  humidity: n % 24 === 15 ? 0.4 : 0.9,
  wind: n % 24 === 20 ? 6 : 3,
  rain: n % 24 === 8 ? 2 : 0,
  ...more,
});
const hours = (from: number, to: number, more: (n: number) => Partial<Hour> = () => ({})): Hour[] =>
  Array.from({ length: to - from }, (_, n) => hour(from + n, more(from + n)));

/** 10 ± 6 °C, coldest at three in the morning and warmest at three in the afternoon. */
const whole = { low: 4, high: 16, rain: 2, wind: 6, humidity: 0.4, isWhole: true };

test('three days of hours are two days, each with the night that begins on it', () => {
  const warmer = (n: number) => (n >= 24 ? { temperature: airAt(n) + 2 } : {});
  expect(gatherDays(hours(0, 72, warmer), gathering)).toEqual([
    { on: '2026-05-14', ...whole, low: 6 },
    { on: '2026-05-15', ...whole, low: 6, high: 18 },
  ]);
});

describe('what is lacking', () => {
  test('hours gone by leave the night as it is, and rain and wind as the least there is', () => {
    expect(gatherDays(hours(7, 48), { ...gathering, days: 1 })).toEqual([
      { on: '2026-05-14', ...whole, isWhole: false },
    ]);
  });

  test('an afternoon that has begun tells no high', () => {
    const now = '2026-05-14T14:00:00-04:00';
    expect(gatherDays(hours(14, 48), { ...gathering, now, days: 1 })).toEqual([
      { on: '2026-05-14', low: 4, rain: 0, wind: 6, isWhole: false },
    ]);
  });

  test('a night that is cut off is left out, and so is a day of which nothing is told', () => {
    expect(gatherDays(hours(0, 28), gathering)).toEqual([
      { on: '2026-05-14', high: 16, rain: 2, wind: 6, humidity: 0.4, isWhole: true },
    ]);
    expect(gatherDays([], gathering)).toEqual([]);
  });

  test('rain that is told of a part of a later day is left out', () => {
    const days = gatherDays(
      hours(0, 72, (n) => (n >= 30 ? { rain: undefined } : {})),
      gathering,
    );
    expect(days.map(({ rain }) => rain)).toEqual([2, undefined]);
  });

  test('the hour that a clock going forward takes away is not missed; two are', () => {
    const without = (...gone: readonly number[]) =>
      gatherDays(
        hours(0, 48).filter((_, n) => !gone.includes(n)),
        { ...gathering, days: 1 },
      )[0]?.low;
    expect([without(26), without(26, 28)]).toEqual([airAt(27), undefined]);
  });
});

test.each<readonly [string, Partial<Hour>, string]>([
  ['a filler for missing air', { temperature: -9999 }, 'high'],
  ['air that would boil water', { temperature: 120 }, 'high'],
  ['rain below zero', { rain: -1 }, 'rain'],
  ['more rain than ever fell', { rain: 9000 }, 'rain'],
  ['wind beyond any storm', { wind: 300 }, 'wind'],
  ['more than all the water that air holds', { humidity: 40 }, 'humidity'],
])('%s counts as not given', (_, value, measure) => {
  const odd = gatherDays(
    hours(0, 48, () => value),
    { ...gathering, days: 1 },
  );
  expect(odd[0]).toBeDefined();
  expect(odd[0]).not.toHaveProperty(measure);
});

test('hours of days that there are not are passed over', () => {
  expect(gatherDays([hour(0, { at: '2026-02-31T00' })], gathering)).toEqual([]);
});
