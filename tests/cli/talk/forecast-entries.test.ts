/** What of a fetched forecast becomes entries, and what is on record already. */
import { expect, test } from 'vitest';
import { forecastEntries } from '../../../cli/talk/forecast-entries.ts';
import type { ForecastDay } from '../../../cli/weather/provider.ts';
import { flockOf, type Line } from '../../helpers/flock-of.ts';

const today: ForecastDay = {
  on: '2026-05-14',
  low: 3.4,
  high: 16.1,
  rain: 2.2,
  wind: 5.1,
  humidity: 0.58,
  isWhole: true,
};
const fetched = '2026-05-14T07:12:00-04:00';
const line = {
  kind: 'weather',
  on: '2026-05-14',
  low: '3.5 C',
  high: '16 C',
  rain: '2 mm',
  wind: '5 m/s',
  humidity: '60 percent',
  forecast: true,
  fetched,
  provider: 'us',
};

const entriesOver = (
  lines: readonly Line[],
  day: ForecastDay,
  when = '2026-05-14T10:00:00-04:00',
): readonly object[] =>
  forecastEntries(
    flockOf(...lines).standing(),
    { provider: 'us', place: { latitude: 44.1, longitude: -73.2 }, fetched: when, days: [day] },
    1,
  );

test('a day is one line, in steps no finer than a forecast is', () => {
  expect(entriesOver([], today, fetched)).toEqual([line]);
});

test('the same again is not written', () => {
  expect(entriesOver([line], { ...today, low: 3.6 })).toEqual([]);
  expect(entriesOver([line], { on: '2026-05-14', low: 3.6, isWhole: true })).toEqual([]);
});

test('what has changed is written, and so is what would by now be told as old', () => {
  const when = '2026-05-14T10:00:00-04:00';
  expect(entriesOver([line], { ...today, low: 4 }, when)).toEqual([{ ...line, low: '4 C', fetched: when }]);
  const next = '2026-05-15T07:00:00-04:00';
  expect(entriesOver([line], today, next)).toEqual([{ ...line, fetched: next }]);
});

test('it is the latest fetched that counts, in whatever order the lines stand; what a keeper typed does not', () => {
  const earlier = { ...line, low: '9 C', fetched: '2026-05-14T05:00:00-04:00' };
  const typed = { kind: 'weather', on: '2026-05-14', low: '9 C', forecast: true };
  expect(entriesOver([line, earlier, typed], today)).toEqual([]);
});

test('of a day that is partly gone, rain that has fallen and wind that has blown stay', () => {
  const rest = { ...today, rain: 0.4, wind: 2, low: 2, isWhole: false };
  expect(entriesOver([line], rest)).toEqual([{ ...line, low: '2 C', fetched: '2026-05-14T10:00:00-04:00' }]);
  expect(entriesOver([line], { ...rest, isWhole: true })).toEqual([
    { ...line, low: '2 C', rain: '0.5 mm', wind: '2 m/s', fetched: '2026-05-14T10:00:00-04:00' },
  ]);
});

test('every entry reads without a problem', () => {
  expect(
    flockOf(...entriesOver([], { ...today, low: -12.3, humidity: 1 }).map((each) => ({ ...each }))).check(
      '2026-05-14',
    ),
  ).toEqual([]);
});
