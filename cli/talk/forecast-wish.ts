/** Whether a line plainly speaks of fetching forecasts: switching it on or off, the place, getting one, showing it. */
import { readPlace, sayPlace } from '../weather/place.ts';

export type ForecastWish =
  | { readonly wish: 'on' | 'off' | 'get' | 'show' }
  | { readonly wish: 'place'; readonly place: string }
  /** A place was meant, and cannot be read. */
  | { readonly wish: 'no-place' };

const the = '(?:the |a |an |our |my )?(?:new |latest |fresh |weather )*';

const patterns: readonly (readonly ['on' | 'off' | 'get' | 'show', RegExp])[] = [
  ['on', new RegExp(`^(?:(?:turn|switch|put) )?${the}forecasts? on$`)],
  ['on', new RegExp(`^(?:turn|switch|put) on ${the}forecasts?$`)],
  ['off', new RegExp(`^(?:(?:turn|switch|put) )?${the}forecasts? off$`)],
  ['off', new RegExp(`^(?:turn|switch|put) off ${the}forecasts?$`)],
  ['off', new RegExp(`^(?:stop|quit) (?:getting|fetching) ${the}forecasts?$`)],
  [
    'get',
    new RegExp(`^(?:get|fetch|update|refresh|renew)(?: me)? ${the}(?:forecasts?|weather)(?: now| again)?$`),
  ],
  ['show', new RegExp(`^(?:show|see)(?: me)? ${the}forecasts?$`)],
  ['show', new RegExp(`^${the}forecast$`)],
];

const placed =
  /^(?:(?:the |our |my )?(?:place|farm|flock|forecast|weather) (?:is )?at|we are at|(?:the |our |my )?(?:coordinates|position)(?: are| is)?)\s+([-−+\d].*)$/;

/** The wish, or null for any other line. */
export const forecastWish = (words: string): ForecastWish | null => {
  const said = words
    .trim()
    .toLowerCase()
    .replace(/[?!.]+$/, '')
    .replace(/^please,? |,? please$/g, '')
    .replace(/\s+/g, ' ');
  const coordinates = placed.exec(said)?.[1];
  if (coordinates !== undefined) {
    const place = readPlace(coordinates);
    if (place !== null) return { wish: 'place', place: sayPlace(place) };
    // An hour or a number of something else is no place that was mistyped.
    return /[.,;]/.test(coordinates) ? { wish: 'no-place' } : null;
  }
  const wish = patterns.find(([, pattern]) => pattern.test(said))?.[0];
  return wish === undefined ? null : { wish };
};
