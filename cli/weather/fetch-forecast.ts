/** A forecast for a place: the one kept while it is fresh, else from the services in their order. */
import { sourcesFor } from './choose.ts';
import { type Gathering, gatherDays } from './days.ts';
import { type Forecast, isFresh, readForecast } from './kept.ts';
import type { Ask, Failure, Patience, Place, Provider } from './provider.ts';
import { usGrid } from './us-grid.ts';
import { worldHourly } from './world-hourly.ts';

/** What fetching needs of the world around it. */
export interface Doors {
  readonly ask: Ask;
  /** Local date and time with offset, now. */
  readonly clock: () => string;
  /** What is kept in the cache folder, null for nothing. */
  readonly readKept: () => string | null;
  /** Keeps it, or lets it be where that cannot be done. */
  readonly keep: (text: string) => void;
  /** Comes when nobody waits any more. */
  readonly leaving: AbortSignal;
}

/** What is wanted; figures are in base units. */
export interface Wanted extends Omit<Gathering, 'now'> {
  readonly place: Place;
  /** Whether that is in the United States; null where the keeper has not told the country. */
  readonly isInUs: boolean | null;
  /** A kept forecast younger than this will do, ms; 0 for none. */
  readonly freshFor: number;
}

export type Fetched =
  | { readonly forecast: Forecast; readonly isKept: boolean }
  | { readonly failed: Failure; readonly provider: string };

/** Three seconds are long for some kilobytes; a third try comes within five, and then the keeper is told. */
const patient: Patience = { timeout: 3000, pauses: [500, 1500], bytes: 2_000_000 };

const providers: Readonly<Record<'us' | 'world', Provider>> = { us: usGrid, world: worldHourly };

const fetchFrom = async (
  { source, hoursFor }: Provider,
  wanted: Wanted,
  { ask, clock, leaving }: Doors,
  patience: Patience,
): Promise<Fetched> => {
  const { place, days } = wanted;
  const hours = await hoursFor(place, { ask, patience, leaving, days });
  if ('failed' in hours) return { failed: hours.failed, provider: source.id };
  const now = clock();
  const gathered = gatherDays(hours.got, { ...wanted, now });
  return gathered.length === 0
    ? { failed: 'not-a-forecast', provider: source.id }
    : { forecast: { provider: source.id, place, fetched: now, days: gathered }, isKept: false };
};

/** Fetches, and keeps what came. Never throws on anything that a service or a network does. */
export const fetchForecast = async (
  wanted: Wanted,
  doors: Doors,
  patience: Patience = patient,
): Promise<Fetched> => {
  const kept = readForecast(doors.readKept());
  if (kept !== null && isFresh(kept, wanted.place, doors.clock(), wanted.freshFor))
    return { forecast: kept, isKept: true };
  let last: Fetched = { failed: 'not-covered', provider: '' };
  for (const { id } of sourcesFor(wanted.place, wanted.isInUs)) {
    last = await fetchFrom(providers[id], wanted, doors, patience);
    // Only a service that has nothing for the place sends us on: the coordinates go to no one else for a line that is down.
    if ('forecast' in last || last.failed !== 'not-covered') break;
  }
  if ('forecast' in last) doors.keep(JSON.stringify(last.forecast));
  return last;
};
