/** The service of the United States: a place has a cell in the grid of a forecast office, and the cell has numbers by the hour. */
import * as z from 'zod/mini';
import { getJson } from './get-json.ts';
import { hoursOf, type Stretch } from './intervals.ts';
import { localHoursIn } from './local-hours.ts';
import type { Asking, Got, Hour, Place, Provider } from './provider.ts';
import { us } from './services.ts';

const cellNumber = z.int().check(z.gte(0), z.lte(9999));

const pointShape = z.object({
  properties: z.object({
    gridId: z.string().check(z.regex(/^[A-Z]{3}$/)),
    gridX: cellNumber,
    gridY: cellNumber,
    timeZone: z.string().check(z.regex(/^[A-Za-z_]{1,20}(\/[A-Za-z_-]{1,20}){0,2}$/)),
  }),
});

/** A series in one unit; the name of the unit is written with and without its vocabulary's prefix. */
const seriesIn = (unit: string) =>
  z.object({
    uom: z.enum([`wmoUnit:${unit}`, `unit:${unit}`]),
    values: z
      .array(z.object({ validTime: z.string().check(z.maxLength(60)), value: z.nullable(z.number()) }))
      .check(z.maxLength(1000)),
  });

const gridShape = z.object({
  properties: z.object({
    temperature: z.unknown(),
    relativeHumidity: z.optional(z.unknown()),
    windSpeed: z.optional(z.unknown()),
    quantitativePrecipitation: z.optional(z.unknown()),
  }),
});

/** A cell often has a layer that is empty, then even without its unit: such a one is as if it were not there. */
const series = (
  layer: unknown,
  unit: string,
  inBase: (value: number) => number,
  shares = false,
): ReadonlyMap<number, number> => {
  const read = seriesIn(unit).safeParse(layer);
  const values: readonly Stretch[] = read.success ? read.data.values : [];
  return new Map([...hoursOf(values, shares)].map(([hour, value]) => [hour, inBase(value)]));
};

/** Reads the numbers of a cell; the zone tells its local hours. */
export const readGrid = (reply: unknown, zone: string): Got<readonly Hour[]> => {
  const read = gridShape.safeParse(reply);
  const localHour = localHoursIn(zone);
  if (!read.success || localHour === undefined) return { failed: 'not-a-forecast' };
  const { temperature, relativeHumidity, windSpeed, quantitativePrecipitation } = read.data.properties;
  const air = series(temperature, 'degC', (celsius) => celsius);
  if (air.size === 0) return { failed: 'not-a-forecast' };
  const damp = series(relativeHumidity, 'percent', (percent) => percent / 100);
  const wind = series(windSpeed, 'km_h-1', (kilometres) => kilometres / 3.6);
  const rain = series(quantitativePrecipitation, 'mm', (millimetres) => millimetres, true);
  const hours = [...new Set([air, damp, wind, rain].flatMap((each) => [...each.keys()]))].sort(
    (a, b) => a - b,
  );
  return {
    got: hours.map((hour) => ({
      at: localHour(hour),
      temperature: air.get(hour),
      humidity: damp.get(hour),
      wind: wind.get(hour),
      rain: rain.get(hour),
    })),
  };
};

const hoursFor = async (place: Place, asking: Asking): Promise<Got<readonly Hour[]>> => {
  const point = await getJson(`${us.base}/points/${place.latitude},${place.longitude}`, asking);
  if ('failed' in point) return point;
  const read = pointShape.safeParse(point.got);
  if (!read.success) return { failed: 'not-a-forecast' };
  const { gridId, gridX, gridY, timeZone } = read.data.properties;
  // The address is put together here: none that a reply names is ever asked.
  const grid = await getJson(`${us.base}/gridpoints/${gridId}/${gridX},${gridY}`, asking);
  return 'failed' in grid ? grid : readGrid(grid.got, timeZone);
};

export const usGrid: Provider = { source: us, hoursFor };
