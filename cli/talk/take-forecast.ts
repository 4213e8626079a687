/** Fetches the forecast for a flock, where its keeper wants that, and writes what is new of it into the ledger. */
import { figureOn } from '../../engine/index.ts';
import type { State } from '../../engine/types.ts';
import type { Fetched } from '../weather/fetch-forecast.ts';
import type { Forecast } from '../weather/kept.ts';
import { readPlace } from '../weather/place.ts';
import type { Failure, Place } from '../weather/provider.ts';
import { type Flock, momentOn } from './flock.ts';
import { forecastEntries } from './forecast-entries.ts';

/** What the keeper has set: whether forecasts are wanted, and for where. */
export interface ForecastSetting {
  readonly isOn: boolean;
  readonly place: Place | null;
}

export const forecastSetting = (state: State): ForecastSetting => {
  const place = state.settings['place-at']?.at(-1)?.value;
  return {
    isOn: state.settings.forecast?.at(-1)?.value === true,
    place: typeof place === 'string' ? readPlace(place) : null,
  };
};

/** Why nothing was asked of anyone: it is off, the place is not known, or nothing can be written here. */
interface NotAsked {
  readonly t: 'off' | 'no-place' | 'read-only';
}

interface Failed {
  readonly t: 'failed';
  readonly failure: Failure;
  /** Id of the service; empty where there is none for the place. */
  readonly provider: string;
}

/** A forecast that came, or that was kept and is fresh, and is still to be written. */
export interface Came {
  readonly t: 'came';
  readonly forecast: Forecast;
}

/** What came of it: `written` counts the entries; `refused` tells that the file could not be written. */
export type Taken =
  | NotAsked
  | Failed
  | { readonly t: 'refused' }
  | { readonly t: 'taken'; readonly forecast: Forecast; readonly written: number };

/** Whether the place is in the United States; null where the country is not told. */
export const isInUs = (flock: Flock): boolean | null => {
  const told = flock.engine().fact('in-united-states', null, momentOn(flock, flock.today));
  return told === 'yes' ? true : told === 'no' ? false : null;
};

const millisecondsInDay = 86_400_000;

const askFor = (flock: Flock, place: Place, isUrgent: boolean): Promise<Fetched> | undefined => {
  const figure = (id: string): number => figureOn(flock.book, id, flock.today);
  return flock.fetchForecast?.({
    place,
    isInUs: isInUs(flock),
    freshFor: isUrgent ? 0 : figure('weather/forecast-fetch-after') * millisecondsInDay,
    days: figure('weather/forecast-days'),
    // Hours of the day, from parts of a day.
    nightBegins: Math.round(figure('weather/night-begins') * 24),
    nightEnds: Math.round(figure('weather/night-ends') * 24),
    plausible: {
      coldest: figure('doubt/coldest-air'),
      hottest: figure('doubt/hottest-air'),
      mostRain: figure('doubt/most-rain'),
      strongestWind: figure('doubt/strongest-wind'),
    },
  });
};

const settingOf = (flock: Flock): ForecastSetting =>
  forecastSetting(flock.engine().state(momentOn(flock, flock.today)));

/**
 * Fetches, and writes nothing yet.
 * @param isUrgent fetch also where the forecast kept is still fresh
 */
export const fetchWanted = async (flock: Flock, isUrgent: boolean): Promise<NotAsked | Failed | Came> => {
  const { isOn, place } = settingOf(flock);
  if (!isOn) return { t: 'off' };
  if (place === null) return { t: 'no-place' };
  const asked = flock.canWrite ? askFor(flock, place, isUrgent) : undefined;
  if (asked === undefined) return { t: 'read-only' };
  const fetched = await asked;
  return 'failed' in fetched
    ? { t: 'failed', failure: fetched.failed, provider: fetched.provider }
    : { t: 'came', forecast: fetched.forecast };
};

/** Writes what is new of a forecast, unless the keeper has switched that off in the meantime. */
export const writeForecast = async (flock: Flock, { forecast }: Came): Promise<Taken> => {
  if (!settingOf(flock).isOn) return { t: 'off' };
  const stands = figureOn(flock.book, 'weather/forecast-stands', flock.today);
  const entries = forecastEntries(flock.engine().standing(), forecast, stands);
  const isWritten = entries.length === 0 || (await flock.record(entries)).isWritten;
  return isWritten ? { t: 'taken', forecast, written: entries.length } : { t: 'refused' };
};

/** Both, one after the other. */
export const takeForecast = async (flock: Flock, isUrgent: boolean): Promise<Taken> => {
  const came = await fetchWanted(flock, isUrgent);
  return came.t === 'came' ? writeForecast(flock, came) : came;
};
