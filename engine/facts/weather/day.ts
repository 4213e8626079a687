/** The day's humidity, rain and wind, as on record or as said in the question. */
import { defineFact, type Fact } from '../define.ts';
import { forecastFigures, restOn } from './forecast-age.ts';

/** Whether the question speaks of it: "it is going to pour" is laid over this for that one answer. */
const said = (id: string): Fact => defineFact({ id, unit: null, per: 'flock', compute: () => 'no' });

/** Whether one of these facts is known, itself always known: so that a rule can rest on a gap in the record. */
const known = (id: string, ...facts: readonly string[]): Fact =>
  defineFact({
    id,
    unit: null,
    per: 'flock',
    wants: facts,
    compute: (read) => facts.some((fact) => read.maybe(fact) !== undefined),
  });

export const dayFacts = [
  known('day-known', 'today-high'),
  known('night-known', 'tonight-low'),
  known('air-known', 'today-high', 'tonight-low'),
  said('rain-said'),
  said('wind-said'),
  defineFact({
    id: 'humidity',
    unit: 'ratio',
    per: 'flock',
    figures: forecastFigures,
    compute: (read) => {
      const humidity = read.state.weather[read.on]?.humidity ?? null;
      if (humidity === null) return undefined;
      restOn(read, humidity);
      return humidity.value;
    },
  }),
  defineFact({
    id: 'rain-today',
    unit: 'mm',
    per: 'flock',
    needs: ['rain-said'],
    figures: ['weather/rain-as-said', ...forecastFigures],
    compute: (read) => {
      const rain = read.state.weather[read.on]?.rain ?? null;
      if (rain !== null) restOn(read, rain);
      const noted = rain?.value ?? 0;
      if (read.text('rain-said') === 'yes') {
        const taken = read.figure('weather/rain-as-said');
        if (noted >= taken) return noted;
        read.assume('rain-as-said', { rain: { value: taken, unit: 'mm' } });
        return taken;
      }
      if (rain === null) read.assume('no-rain-that-day');
      return noted;
    },
  }),
  defineFact({
    id: 'wind-today',
    unit: 'm/s',
    per: 'flock',
    needs: ['wind-said'],
    figures: ['weather/wind-as-said', ...forecastFigures],
    compute: (read) => {
      const wind = read.state.weather[read.on]?.wind ?? null;
      if (wind !== null) restOn(read, wind);
      if (read.text('wind-said') !== 'yes') return wind?.value;
      const taken = read.figure('weather/wind-as-said');
      if (wind !== null && wind.value >= taken) return wind.value;
      read.assume('wind-as-said', { wind: { value: taken, unit: 'm/s' } });
      return taken;
    },
  }),
];
