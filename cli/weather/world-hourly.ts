/** The service for the whole world: one request for a place, columns of hours in its own local time. */
import * as z from 'zod/mini';
import { getJson } from './get-json.ts';
import type { Asking, Got, Hour, Place, Provider } from './provider.ts';
import { world } from './services.ts';

const most = 24 * 17;
const column = z.array(z.nullable(z.number())).check(z.maxLength(most));

const shape = z.object({
  hourly_units: z.object({
    time: z.literal('iso8601'),
    temperature_2m: z.literal('°C'),
    relative_humidity_2m: z.literal('%'),
    precipitation: z.literal('mm'),
    wind_speed_10m: z.literal('m/s'),
  }),
  hourly: z.object({
    time: z.array(z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}T\d{2}:00$/))).check(z.maxLength(most)),
    temperature_2m: column,
    relative_humidity_2m: column,
    precipitation: column,
    wind_speed_10m: column,
  }),
});

/** Reads the columns; they must be of one length. */
export const readHourly = (reply: unknown): Got<readonly Hour[]> => {
  const read = shape.safeParse(reply);
  if (!read.success) return { failed: 'not-a-forecast' };
  const { time, temperature_2m, relative_humidity_2m, precipitation, wind_speed_10m } = read.data.hourly;
  const columns = [temperature_2m, relative_humidity_2m, precipitation, wind_speed_10m];
  if (columns.some(({ length }) => length !== time.length)) return { failed: 'not-a-forecast' };
  return {
    got: time.map((at, n) => {
      const percent = relative_humidity_2m[n] ?? undefined;
      return {
        at: at.slice(0, 13),
        temperature: temperature_2m[n] ?? undefined,
        humidity: percent === undefined ? undefined : percent / 100,
        wind: wind_speed_10m[n] ?? undefined,
        // The service gives with an hour what has fallen in the one before it.
        rain: precipitation[n + 1] ?? undefined,
      };
    }),
  };
};

const hoursFor = async ({ latitude, longitude }: Place, asking: Asking): Promise<Got<readonly Hour[]>> => {
  const wanted = new URLSearchParams({
    latitude: String(latitude),
    longitude: String(longitude),
    hourly: 'temperature_2m,relative_humidity_2m,precipitation,wind_speed_10m',
    temperature_unit: 'celsius',
    wind_speed_unit: 'ms',
    precipitation_unit: 'mm',
    timezone: 'auto',
    // The night of the last day ends on the next one.
    forecast_days: String(Math.min(asking.days + 1, 16)),
  });
  const reply = await getJson(`${world.base}/v1/forecast?${wanted}`, asking);
  return 'failed' in reply ? reply : readHourly(reply.got);
};

export const worldHourly: Provider = { source: world, hoursFor };
