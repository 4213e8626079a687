/** Which services a place is asked of, in their order; loads nothing, so that it can be said before anything is fetched. */
import type { Place } from './provider.ts';
import { type ForecastSource, sources } from './services.ts';

const isWithin = ({ latitude, longitude }: Place, { covers }: ForecastSource): boolean =>
  covers.length === 0 ||
  covers.some(
    ([south, west, north, east]) =>
      latitude >= south && latitude <= north && longitude >= west && longitude <= east,
  );

/**
 * The service of the country first; the one for the world where there is none, or where the first has nothing for the place.
 * @param isInUs null where the country is not told: then the place decides, and a border is crossed by its boxes
 */
export const sourcesFor = (place: Place, isInUs: boolean | null): readonly ForecastSource[] =>
  sources.filter((each) => isWithin(place, each) && !(each.id === 'us' && isInUs === false));
