/** The forecast fetched last, as it is kept in the cache folder. */
import * as z from 'zod/mini';
import { isDay } from '../../engine/day.ts';
import type { ForecastDay, Place } from './provider.ts';

/** A forecast with where it is for, where it is from and when it was fetched. */
export interface Forecast {
  /** Id of the service. */
  readonly provider: string;
  readonly place: Place;
  /** Local date and time with offset. */
  readonly fetched: string;
  readonly days: readonly ForecastDay[];
}

const number = z.optional(z.number());

const shape = z.object({
  provider: z.enum(['us', 'world']),
  place: z.object({ latitude: z.number(), longitude: z.number() }),
  fetched: z.string().check(z.refine((text) => !Number.isNaN(Date.parse(text)))),
  days: z
    .array(
      z.object({
        on: z.string().check(z.refine(isDay)),
        low: number,
        high: number,
        rain: number,
        wind: number,
        humidity: number,
        isWhole: z.boolean(),
      }),
    )
    .check(z.maxLength(20)),
});

/** Reads what was kept; null for anything else, which is then as if nothing were kept. */
export const readForecast = (text: string | null): Forecast | null => {
  try {
    const read = shape.safeParse(JSON.parse(text ?? 'null'));
    return read.success ? (read.data as Forecast) : null;
  } catch {
    return null;
  }
};

/** Whether it is of the place and not older than so many ms; one from the future tells of a clock put back and is not. */
export const isFresh = (kept: Forecast, place: Place, now: string, most: number): boolean => {
  const age = Date.parse(now) - Date.parse(kept.fetched);
  const isThere = kept.place.latitude === place.latitude && kept.place.longitude === place.longitude;
  return isThere && age >= 0 && age < most && kept.days[0]?.on === now.slice(0, 10);
};
