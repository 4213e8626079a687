/** How much more birds outside eat on a cold day. */
import type { Day } from '../../day.ts';
import type { Reader } from '../define.ts';
import { forecastFigures, restOn } from '../weather/forecast-age.ts';

export const coldFigures = ['feed/cold-below', 'feed/cold-adds', ...forecastFigures];

/** The day's mean air where low and high are on record, else its low; °C. */
const airOn = (read: Reader, day: Day): number | undefined => {
  const weather = read.state.weather[day];
  if (weather === undefined || weather.low === null) return undefined;
  restOn(read, weather.low, ...(weather.high === null ? [] : [weather.high]));
  return weather.high === null ? weather.low.value : (weather.low.value + weather.high.value) / 2;
};

/** Share of feed that cold adds on a day; 0 where the air is not on record. */
export const coldShare = (read: Reader, day: Day): number => {
  const air = airOn(read, day);
  return air === undefined
    ? 0
    : Math.max(0, read.figure('feed/cold-below') - air) * read.figure('feed/cold-adds');
};

/** Whether the day's air is on record, so that its cold could be counted. */
export const hasAir = (read: Reader, day: Day): boolean => (read.state.weather[day]?.low ?? null) !== null;
