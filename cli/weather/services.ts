/** Which forecast services there are: the only place that names their hosts, with their terms and how they are to be named. */

/** A forecast service as its public documents describe it. */
export interface ForecastSource {
  /** As it stands in the ledger. */
  readonly id: 'us' | 'world';
  readonly name: string;
  readonly base: string;
  /** Shown wherever its forecast is shown in full. */
  readonly attribution: string;
  /** What it asks of those who use it, in a few words. */
  readonly terms: string;
  /** Boxes of south, west, north, east in degrees, within which it may have a forecast; none for the whole world. */
  readonly covers: readonly (readonly [number, number, number, number])[];
}

/** Its documents call it open data, free for any purpose, and ask for a user agent and a reasonable number of requests. */
export const us: ForecastSource = {
  id: 'us',
  name: 'the National Weather Service of the United States',
  base: 'https://api.weather.gov',
  attribution:
    'Forecast of the U.S. National Weather Service, https://www.weather.gov; its hours are gathered into days here.',
  terms: 'open data, free for any use',
  // The 48 states in strips from west to east, so that hardly anything of Canada lies within one; Alaska west of the Yukon and
  // its coast; Hawaii; Puerto Rico with the Virgin Islands. What lies beyond a border all the same it turns down itself.
  covers: [
    [24, -125.5, 48.4, -123.2],
    [24, -123.2, 49.0, -95.15],
    [24, -95.15, 48.7, -93],
    [24, -93, 48.3, -89.5],
    [24, -89.5, 47.6, -84.8],
    [24, -84.8, 46.5, -83.4],
    [24, -83.4, 45.9, -82.4],
    [24, -82.4, 42.2, -79.76],
    [24, -79.76, 42.6, -79.05],
    [24, -79.05, 43.4, -76.4],
    [24, -76.4, 44.4, -75.75],
    [24, -75.75, 45.02, -71.5],
    [24, -71.5, 45.3, -70.85],
    [24, -70.85, 45.9, -70.3],
    [24, -70.3, 47.47, -67.8],
    [24, -67.8, 45.7, -66.9],
    [51, -180, 71.7, -141],
    [54.6, -141, 60.4, -129.9],
    [18.5, -161, 22.7, -154.5],
    [17.5, -67.5, 18.7, -64.3],
  ],
};

/** Its licence page offers the data under CC BY 4.0 and asks for a link and for word of changes; it needs no key. */
export const world: ForecastSource = {
  id: 'world',
  name: 'Open-Meteo',
  base: 'https://api.open-meteo.com',
  attribution:
    'Weather data by Open-Meteo.com, https://open-meteo.com, under CC BY 4.0, https://creativecommons.org/licenses/by/4.0/; its hours are gathered into days here.',
  terms: 'free for non-commercial use, under CC BY 4.0',
  covers: [],
};

/** All services, by what the ledger calls them. */
export const sources: readonly ForecastSource[] = [us, world];
