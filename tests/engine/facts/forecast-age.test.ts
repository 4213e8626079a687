/** How old the forecast is that an answer rests on: said from the day that the figure names, of days to come only. */
import { describe, expect, test } from 'vitest';
import { allFacts } from '../../../engine/facts/index.ts';
import { openWorkings } from '../../../engine/facts/workings.ts';
import { flockOf, type Line, shipped } from '../../helpers/flock-of.ts';

const days = ['2026-05-13', '2026-05-14', '2026-05-15', '2026-05-16'];
const values: Line = { low: '3 C', high: '30 C', rain: '4 mm', wind: '5 m/s', humidity: '60 percent' };
const fetchedOn = (day: string): readonly Line[] =>
  days.map((on) => ({
    kind: 'weather',
    on,
    ...values,
    forecast: true,
    fetched: `${day}T07:12:00-04:00`,
    provider: 'us',
  }));

const assumedOf = (
  fact: string,
  lines: readonly Line[],
  on = '2026-05-14',
  asked = on,
): readonly unknown[] => {
  const state = flockOf(...lines).state({ on: asked, asOf: null, lines: null });
  const workings = openWorkings({ state, book: shipped, facts: allFacts, on, until: null, supposing: [] });
  return workings.step(fact, null).assumed.filter(({ id }) => id === 'forecast-of-another-day');
};
const agedFrom = (fetched: string, age: number) => ({
  id: 'forecast-of-another-day',
  group: null,
  values: { fetched: { value: fetched, unit: 'date' }, age: { value: age, unit: 'day' } },
});

describe.each([
  'tonight-low',
  'night-low',
  'today-high',
  'rain-soon',
  'wind-soon',
  'rain-lately',
  'rain-today',
  'wind-today',
  'humidity',
])('%s', (fact) => {
  test('says nothing of a forecast of the same day, and how old one of another day is', () => {
    expect(assumedOf(fact, fetchedOn('2026-05-14'))).toEqual([]);
    expect(assumedOf(fact, fetchedOn('2026-05-12'))).toEqual([agedFrom('2026-05-12', 2)]);
  });

  test('says nothing of what a keeper typed', () => {
    const typed = days.map((on): Line => ({ kind: 'weather', on, ...values, forecast: true }));
    expect(assumedOf(fact, typed)).toEqual([]);
  });
});

test('the oldest of several tells the age', () => {
  const [, today, next] = fetchedOn('2026-05-13');
  const [, , , last] = fetchedOn('2026-05-11');
  const lines = [today, next, last].flatMap((each) => (each === undefined ? [] : [each]));
  expect(assumedOf('night-low', lines)).toEqual([agedFrom('2026-05-11', 3)]);
});

test('a forecast of a day gone by does not age', () => {
  const lines = fetchedOn('2026-05-13').filter(({ on }) => on === '2026-05-13');
  expect(assumedOf('rain-lately', lines, '2026-05-14')).toEqual([]);
});
