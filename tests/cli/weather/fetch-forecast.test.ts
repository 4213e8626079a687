/** A forecast for a place: from whom, how often, and what is kept of it. */
import { afterEach, expect, test } from 'vitest';
import { type Doors, fetchForecast, type Wanted } from '../../../cli/weather/fetch-forecast.ts';
import {
  type Answering,
  type ForecastServer,
  hasty,
  json,
  raw,
  serve,
  silence,
} from '../../helpers/forecast-server.ts';
import { usGridFor, usPoint, worldFor } from '../../helpers/recorded-forecasts.ts';

let server: ForecastServer | undefined;
afterEach(() => server?.close());

const vermont = { latitude: 44.1, longitude: -73.2 };
const wanted: Wanted = {
  place: vermont,
  isInUs: null,
  freshFor: 3 * 3_600_000,
  days: 1,
  nightBegins: 18,
  nightEnds: 9,
  plausible: { coldest: -50, hottest: 55, mostRain: 500, strongestWind: 67 },
};
const us = [json(usPoint), json(usGridFor(0, 48))] as const;
const today = { on: '2026-05-14', low: 4, high: 16, rain: 3, wind: 5, humidity: 0.6, isWhole: true };

/** What is kept, and a clock that stands. */
const doorsOf = ({ ask }: ForecastServer, kept: string | null = null, now = '2026-05-14T07:12:00-04:00') => {
  const keeping: { text: string | null } = { text: kept };
  const doors: Doors = {
    ask,
    clock: () => now,
    readKept: () => keeping.text,
    keep: (text) => {
      keeping.text = text;
    },
    leaving: new AbortController().signal,
  };
  return { doors, keeping };
};

const forecast = { provider: 'us', place: vermont, fetched: '2026-05-14T07:12:00-04:00', days: [today] };

test('the service of the country gives the forecast, which is kept', async () => {
  server = await serve(...us);
  const { doors, keeping } = doorsOf(server);
  expect(await fetchForecast(wanted, doors, hasty)).toEqual({ forecast, isKept: false });
  expect(JSON.parse(keeping.text ?? '')).toEqual(forecast);
});

test.each([
  ['younger than it may be, is taken and nobody asked', '2026-05-14T10:11:59-04:00', vermont, 0],
  ['as old as it may be, is fetched anew', '2026-05-14T10:12:00-04:00', vermont, 2],
  ['from a clock that has been put back, is fetched anew', '2026-05-14T07:11:00-04:00', vermont, 2],
  ['of another place, is fetched anew', '2026-05-14T08:00:00-04:00', { latitude: 40, longitude: -80 }, 2],
])('a forecast that is kept, %s', async (_, now, place, asked) => {
  server = await serve(...us);
  const { doors } = doorsOf(server, JSON.stringify(forecast), now);
  const fetched = await fetchForecast({ ...wanted, place }, doors, hasty);
  expect([server.asked.length, 'forecast' in fetched && fetched.isKept]).toEqual([asked, asked === 0]);
});

test('one of the day before is fetched anew, however young', async () => {
  server = await serve(...us);
  const late = JSON.stringify({
    ...forecast,
    fetched: '2026-05-13T23:50:00-04:00',
    days: [{ ...today, on: '2026-05-13' }],
  });
  const { doors } = doorsOf(server, late, '2026-05-14T00:10:00-04:00');
  await fetchForecast(wanted, doors, hasty);
  expect(server.asked.length).toBe(2);
});

test.each([
  '',
  '{',
  '[]',
  '{"provider":"elsewhere"}',
  JSON.stringify({ ...forecast, days: [{ on: '2026-02-31' }] }),
])('a kept file that says %j is as if there were none', async (text) => {
  server = await serve(...us);
  const { doors } = doorsOf(server, text);
  expect(await fetchForecast(wanted, doors, hasty)).toEqual({ forecast, isKept: false });
});

test('a place without a forecast there is asked of the service for the world', async () => {
  server = await serve(raw(404, 'application/problem+json', '{}'), json(worldFor(48)));
  const { doors } = doorsOf(server);
  expect(await fetchForecast(wanted, doors, hasty)).toEqual({
    forecast: { ...forecast, provider: 'world' },
    isKept: false,
  });
  expect(server.asked.map((each) => each.split(' ')[0])).toEqual(['api.weather.gov', 'api.open-meteo.com']);
});

test('a place that is told to be elsewhere is never asked of the service of the United States', async () => {
  server = await serve(json(worldFor(48)));
  const { doors } = doorsOf(server);
  const ontario = { latitude: 43.7, longitude: -79.4 };
  const fetched = await fetchForecast({ ...wanted, place: ontario, isInUs: false }, doors, hasty);
  expect([server.asked.map((each) => each.split(' ')[0]), 'forecast' in fetched]).toEqual([
    ['api.open-meteo.com'],
    true,
  ]);
});

test.each<readonly [string, Answering, string]>([
  ['down', raw(503, 'text/plain', ''), 'turned-down'],
  ['silent', silence, 'too-slow'],
  ['behind a page', raw(200, 'text/html', '<html>'), 'no-data'],
])('the coordinates go to no second service where the first is %s', async (_, answer, failed) => {
  server = await serve(answer);
  const { doors, keeping } = doorsOf(server, 'kept');
  expect(await fetchForecast(wanted, doors, hasty)).toEqual({ failed, provider: 'us' });
  expect([new Set(server.asked), keeping.text]).toEqual([
    new Set(['api.weather.gov /points/44.1,-73.2']),
    'kept',
  ]);
});

test('a forecast that tells nothing of today or later is none', async () => {
  server = await serve(...us);
  const { doors, keeping } = doorsOf(server, null, '2026-06-14T07:12:00-04:00');
  expect(await fetchForecast(wanted, doors, hasty)).toEqual({ failed: 'not-a-forecast', provider: 'us' });
  expect(keeping.text).toBe(null);
});
