/** The way to the forecast services, taken only when a forecast is wanted: it loads nothing before. */
import { join } from 'node:path';
import { keepText, readKept, type Surroundings } from '../surroundings.ts';
import type { Flock } from '../talk/flock.ts';

/** @param leaving comes when nobody waits for a forecast any more */
export const forecastDoor =
  (around: Surroundings, leaving: AbortSignal): NonNullable<Flock['fetchForecast']> =>
  async (wanted) => {
    const { fetchForecast } = await import('../weather/fetch-forecast.ts');
    const path = join(around.cacheFolder, 'forecast.json');
    return fetchForecast(wanted, {
      ask: around.askNetwork,
      clock: around.clock,
      readKept: () => readKept(path),
      keep: (text) => keepText(path, text),
      leaving,
    });
  };
