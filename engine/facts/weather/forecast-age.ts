/** What a fetched forecast rests on, said aloud where it is no longer of today. */
import { daysBetween } from '../../day.ts';
import type { Air } from '../../types.ts';
import type { Reader } from '../define.ts';

/** Figures that `restOn` reads; a fact that uses it declares them. */
export const forecastFigures = ['weather/forecast-stands'];

/**
 * Records that weather went into a value. Of days to come it says how old the forecast is once that is as many days as the
 * figure allows; what was foretold of days gone by no longer ages.
 */
export const restOn = (read: Reader, ...air: readonly Air[]): void => {
  read.from(...air);
  const fetched = air
    .flatMap((each) =>
      each.fetched === undefined || each.on < read.asked ? [] : [each.fetched.slice(0, 10)],
    )
    .sort();
  const [oldest] = fetched;
  if (oldest === undefined) return;
  const age = daysBetween(oldest, read.asked);
  if (age < read.figure('weather/forecast-stands')) return;
  read.assume('forecast-of-another-day', {
    fetched: { value: oldest, unit: 'date' },
    age: { value: age, unit: 'day' },
  });
};
