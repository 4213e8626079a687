/** Nights, days and rain as far as they are on record; beyond that they are taken to go on as they were, aloud. */
import { addDays, type Day } from '../day.ts';
import type { Air } from '../types.ts';
import { defineFact, type Reader } from './define.ts';
import { forecastFigures, restOn } from './weather/forecast-age.ts';

type Measure = 'low' | 'high' | 'rain' | 'wind';

const noted = (read: Reader, on: Day, measure: Measure): Air | undefined =>
  read.state.weather[on]?.[measure] ?? undefined;

/** Days from `on`, as many as the figure says. */
const daysFrom = (on: Day, count: number): Day[] =>
  Array.from({ length: count }, (_, index) => addDays(on, index));

/** The latest values on record that are not older than a figure allows, newest first. */
const latest = (read: Reader, measure: Measure, within: number): Air[] => {
  const oldest = addDays(read.asked, -within);
  const days = read.weatherDays();
  const old = days.findIndex((day) => day < oldest);
  return (old === -1 ? days : days.slice(0, old)).flatMap((day) => noted(read, day, measure) ?? []);
};

export const nightFacts = [
  defineFact({
    id: 'night-low',
    unit: 'C',
    per: 'flock',
    figures: ['weather/nights-ahead', 'weather/record-stands', ...forecastFigures],
    compute: (read) => {
      const nights = daysFrom(read.on, read.figure('weather/nights-ahead'));
      const known = nights.flatMap((night) => noted(read, night, 'low') ?? []);
      if (known.length > 0) {
        restOn(read, ...known);
        const open = nights.length - known.length;
        if (open > 0) read.assume('nights-no-colder', { nights: { value: open, unit: 'day' } });
        return Math.min(...known.map((each) => each.value));
      }
      // Only a look ahead may lean on nights gone by: tonight itself has to be told.
      if (read.on <= read.asked) return undefined;
      const past = latest(read, 'low', read.figure('weather/record-stands')).slice(0, nights.length);
      if (past.length === 0) return undefined;
      restOn(read, ...past);
      const low = Math.min(...past.map((each) => each.value));
      read.assume('nights-as-before', {
        low: { value: low, unit: 'C' },
        from: { value: addDays(past[0]?.on ?? read.asked, 1), unit: 'date' },
      });
      return low;
    },
  }),
  defineFact({
    id: 'tonight-low',
    unit: 'C',
    per: 'flock',
    figures: forecastFigures,
    compute: (read) => {
      const low = noted(read, read.on, 'low');
      if (low === undefined) return undefined;
      restOn(read, low);
      return low.value;
    },
  }),
  defineFact({
    id: 'today-high',
    unit: 'C',
    per: 'flock',
    figures: forecastFigures,
    compute: (read) => {
      const high = noted(read, read.on, 'high');
      if (high === undefined) return undefined;
      restOn(read, high);
      return high.value;
    },
  }),
  defineFact({
    id: 'rain-soon',
    unit: 'mm',
    per: 'flock',
    figures: ['weather/nights-ahead', ...forecastFigures],
    compute: (read) => {
      const days = daysFrom(read.on, read.figure('weather/nights-ahead'));
      const known = days.flatMap((day) => noted(read, day, 'rain') ?? []);
      restOn(read, ...known);
      if (known.length === 0) read.assume('no-rain-on-record');
      return known.reduce((most, each) => Math.max(most, each.value), 0);
    },
  }),
  defineFact({
    id: 'rain-lately',
    unit: 'mm',
    per: 'flock',
    figures: forecastFigures,
    compute: (read) => {
      const known = [read.on, addDays(read.on, -1)].flatMap((day) => noted(read, day, 'rain') ?? []);
      restOn(read, ...known);
      return known.reduce((most, each) => Math.max(most, each.value), 0);
    },
  }),
  defineFact({
    id: 'wind-soon',
    unit: 'm/s',
    per: 'flock',
    figures: ['weather/nights-ahead', ...forecastFigures],
    compute: (read) => {
      const known = daysFrom(read.on, read.figure('weather/nights-ahead')).flatMap(
        (day) => noted(read, day, 'wind') ?? [],
      );
      restOn(read, ...known);
      return known.reduce((most, each) => Math.max(most, each.value), 0);
    },
  }),
];
