/** Replies in the shape in which both forecast services give them, shortened to what tells; the numbers are invented. */

/** Hours from local midnight of 14 May 2026 on, `2026-05-14T00`. */
export const localHour = (n: number): string => new Date(Date.UTC(2026, 4, 14, n)).toISOString().slice(0, 13);

/** Degrees by the hour of the day: coldest at three in the morning, warmest at three in the afternoon. */
export const airAt = (n: number): number => {
  const hour = ((n % 24) + 24) % 24;
  return 10 - 6 * Math.cos(((hour - 3) * Math.PI) / 12);
};

/** A place and the cell of its forecast office, as the first reply of the service of the United States has it. */
export const usPoint = {
  '@context': ['https://geojson.org/geojson-ld/geojson-context.jsonld', { '@version': '1.1' }],
  id: 'https://api.weather.gov/points/44.1,-73.2',
  type: 'Feature',
  geometry: { type: 'Point', coordinates: [-73.2, 44.1] },
  properties: {
    '@type': 'wx:Point',
    cwa: 'BTV',
    forecastOffice: 'https://api.weather.gov/offices/BTV',
    gridId: 'BTV',
    gridX: 87,
    gridY: 48,
    // None of these is ever asked: the address of the cell is put together from its numbers.
    forecast: 'https://elsewhere.example/forecast',
    forecastHourly: 'https://elsewhere.example/forecast/hourly',
    forecastGridData: 'https://elsewhere.example/gridpoints/BTV/87,48',
    timeZone: 'America/New_York',
  },
};

const inUtc = (n: number): string => new Date(Date.UTC(2026, 4, 14, n + 4)).toISOString().slice(0, 19);

/** The numbers of a cell for hours counted from local midnight of 14 May, four hours behind UTC. */
export const usGridFor = (from: number, to: number): object => {
  const hours = Array.from({ length: to - from }, (_, n) => from + n);
  return {
    id: 'https://api.weather.gov/gridpoints/BTV/87,48',
    type: 'Feature',
    properties: {
      '@type': 'wx:Gridpoint',
      updateTime: '2026-05-14T10:02:00+00:00',
      temperature: {
        uom: 'wmoUnit:degC',
        values: hours.map((n) => ({ validTime: `${inUtc(n)}+00:00/PT1H`, value: airAt(n) })),
      },
      relativeHumidity: {
        uom: 'wmoUnit:percent',
        values: [{ validTime: `${inUtc(from)}+00:00/P2DT12H`, value: 60 }],
      },
      windSpeed: {
        uom: 'wmoUnit:km_h-1',
        values: [
          { validTime: `${inUtc(from)}+00:00/PT15H`, value: 9 },
          { validTime: `${inUtc(from + 15)}+00:00/P2D`, value: 18 },
        ],
      },
      quantitativePrecipitation: {
        uom: 'wmoUnit:mm',
        values: [
          { validTime: `${inUtc(from)}+00:00/PT12H`, value: 0 },
          { validTime: `${inUtc(from + 12)}+00:00/PT6H`, value: 3 },
          { validTime: `${inUtc(from + 18)}+00:00/P2D`, value: 0 },
        ],
      },
      snowfallAmount: { values: [] },
    },
  };
};

/** Columns of hours from local midnight of 14 May, as the service for the world gives them. */
export const worldFor = (
  hours: number,
): {
  readonly hourly_units: object;
  readonly hourly: Readonly<Record<string, readonly unknown[]>>;
  readonly [about: string]: unknown;
} => {
  const all = Array.from({ length: hours }, (_, n) => n);
  return {
    latitude: 52.1,
    longitude: 5.3,
    generationtime_ms: 0.11,
    utc_offset_seconds: 7200,
    timezone: 'Europe/Amsterdam',
    timezone_abbreviation: 'GMT+2',
    elevation: 3,
    hourly_units: {
      time: 'iso8601',
      temperature_2m: '°C',
      relative_humidity_2m: '%',
      precipitation: 'mm',
      wind_speed_10m: 'm/s',
    },
    hourly: {
      time: all.map((n) => `${localHour(n)}:00`),
      temperature_2m: all.map(airAt),
      relative_humidity_2m: all.map(() => 60),
      // With each hour, what fell in the one before it: three hours of rain from noon on.
      precipitation: all.map((n) => (n >= 13 && n <= 15 ? 1 : 0)),
      wind_speed_10m: all.map((n) => (n < 15 ? 2.5 : 5)),
    },
  };
};
