/** Both services behind the port: what is asked of them, and the hours read from replies in their shape. */
import { afterEach, describe, expect, test } from 'vitest';
import { readGrid, usGrid } from '../../../cli/weather/us-grid.ts';
import { readHourly, worldHourly } from '../../../cli/weather/world-hourly.ts';
import { asking, type ForecastServer, json, raw, serve } from '../../helpers/forecast-server.ts';
import { airAt, usGridFor, usPoint, worldFor } from '../../helpers/recorded-forecasts.ts';

let server: ForecastServer | undefined;
afterEach(() => server?.close());

const vermont = { latitude: 44.1, longitude: -73.2 };
const holland = { latitude: 52.1, longitude: 5.3 };

describe('the service of the United States', () => {
  test('is asked for the cell of the place, then for its numbers, and for no address out of a reply', async () => {
    server = await serve(
      json(usPoint, 'application/geo+json'),
      json(usGridFor(6, 8), 'application/geo+json'),
    );
    const hours = await usGrid.hoursFor(vermont, asking(server));
    expect(server.asked).toEqual([
      'api.weather.gov /points/44.1,-73.2',
      'api.weather.gov /gridpoints/BTV/87,48',
    ]);
    // The layers of wind, rain and humidity go on for longer than that of temperature.
    expect('got' in hours && hours.got.slice(0, 3)).toEqual([
      { at: '2026-05-14T06', temperature: airAt(6), humidity: 0.6, wind: 2.5, rain: 0 },
      { at: '2026-05-14T07', temperature: airAt(7), humidity: 0.6, wind: 2.5, rain: 0 },
      { at: '2026-05-14T08', temperature: undefined, humidity: 0.6, wind: 2.5, rain: 0 },
    ]);
  });

  test('rain of six hours is dealt out to them', () => {
    const read = readGrid(usGridFor(0, 48), 'America/New_York');
    const rain = 'got' in read ? read.got.filter((hour) => (hour.rain ?? 0) > 0) : [];
    expect(rain.map(({ at, rain: mm }) => [at, mm])).toEqual(
      [12, 13, 14, 15, 16, 17].map((hour) => [`2026-05-14T${hour}`, 0.5]),
    );
  });

  test('a place that it does not cover, and a cell that is down, are told apart', async () => {
    server = await serve(raw(404, 'application/problem+json', '{}'));
    expect(await usGrid.hoursFor(holland, asking(server))).toEqual({ failed: 'not-covered' });
    await server.close();
    server = await serve(json(usPoint), raw(500, 'application/problem+json', '{}'));
    expect(await usGrid.hoursFor(vermont, asking(server))).toEqual({ failed: 'turned-down' });
  });

  test.each([
    ['an office that would lead elsewhere', { gridId: '../x' }],
    ['a cell that is no number', { gridX: '87' }],
    ['a cell below zero', { gridY: -1 }],
    ['a zone with other letters', { timeZone: 'America/New York;' }],
  ])('%s is no forecast, and the second request is never made', async (_, broken) => {
    server = await serve(json({ ...usPoint, properties: { ...usPoint.properties, ...broken } }));
    expect(await usGrid.hoursFor(vermont, asking(server))).toEqual({ failed: 'not-a-forecast' });
    expect(server.asked.length).toBe(1);
  });

  test.each<readonly [string, unknown, string]>([
    ['nothing', null, 'America/New_York'],
    ['no layers', { properties: {} }, 'America/New_York'],
    [
      'another unit',
      { properties: { temperature: { uom: 'wmoUnit:degF', values: [] } } },
      'America/New_York',
    ],
    [
      'text for a number',
      {
        properties: {
          temperature: {
            uom: 'wmoUnit:degC',
            values: [{ validTime: '2026-05-14T10:00:00+00:00/PT1H', value: '7' }],
          },
        },
      },
      'America/New_York',
    ],
    [
      'a time that goes on for years',
      {
        properties: {
          temperature: {
            uom: 'wmoUnit:degC',
            values: [{ validTime: '2026-05-14T10:00:00+00:00/P99D', value: 7 }],
          },
        },
      },
      'America/New_York',
    ],
    ['a zone that there is not', usGridFor(0, 48), 'Moon/Crater'],
  ])('%s is no forecast', (_, reply, zone) => {
    expect(readGrid(reply, zone)).toEqual({ failed: 'not-a-forecast' });
  });

  test('a layer that is empty or missing leaves its values unknown', () => {
    const { properties } = usGridFor(6, 7) as { properties: Record<string, unknown> };
    const read = readGrid(
      { properties: { temperature: properties.temperature, windSpeed: { values: [] } } },
      'America/New_York',
    );
    expect(read).toEqual({
      got: [
        { at: '2026-05-14T06', temperature: airAt(6), humidity: undefined, wind: undefined, rain: undefined },
      ],
    });
  });
});

describe('the service for the world', () => {
  test('is asked once, in base units, for a day more than wanted', async () => {
    server = await serve(json(worldFor(48)));
    const hours = await worldHourly.hoursFor(holland, asking(server));
    expect(server.asked).toEqual([
      'api.open-meteo.com /v1/forecast?latitude=52.1&longitude=5.3&hourly=temperature_2m%2Crelative_humidity_2m%2Cprecipitation%2Cwind_speed_10m&temperature_unit=celsius&wind_speed_unit=ms&precipitation_unit=mm&timezone=auto&forecast_days=3',
    ]);
    expect('got' in hours && [hours.got.length, hours.got[11], hours.got[12], hours.got[47]]).toEqual([
      48,
      { at: '2026-05-14T11', temperature: airAt(11), humidity: 0.6, wind: 2.5, rain: 0 },
      { at: '2026-05-14T12', temperature: airAt(12), humidity: 0.6, wind: 2.5, rain: 1 },
      // What falls in its last hour the reply does not tell.
      { at: '2026-05-15T23', temperature: airAt(47), humidity: 0.6, wind: 5, rain: undefined },
    ]);
  });

  const good = worldFor(3);
  test.each<readonly [string, unknown]>([
    ['nothing', null],
    ['a list', []],
    ['an error under a good status', { error: true, reason: 'Minutely API request limit exceeded.' }],
    ['other units', { ...good, hourly_units: { ...good.hourly_units, wind_speed_10m: 'km/h' } }],
    ['columns of different length', { ...good, hourly: { ...good.hourly, precipitation: [0] } }],
    ['text for a number', { ...good, hourly: { ...good.hourly, temperature_2m: ['3', 4, 5] } }],
    ['a time with words in it', { ...good, hourly: { ...good.hourly, time: ['today', 'b', 'c'] } }],
    ['more hours than any forecast', worldFor(24 * 17 + 1)],
  ])('%s is no forecast', (_, reply) => {
    expect(readHourly(reply)).toEqual({ failed: 'not-a-forecast' });
  });

  test('an hour without a number is unknown', () => {
    const reply = { ...good, hourly: { ...good.hourly, temperature_2m: [null, 4, 5] } };
    const read = readHourly(reply);
    expect('got' in read && read.got[0]?.temperature).toBe(undefined);
  });
});
