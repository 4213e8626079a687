/** What a hot day is to birds: wet bulb, heat index and a level by their weight and place. */
import { defineFact, type Reader } from '../define.ts';
import { heatIndex, intoWetBulbRange, movingAirFactor, wetBulb, wetBulbRange } from '../sums/heat-index.ts';
import type { Level } from './level.ts';

/** The air of a day: high in °C, humidity 0..1 and wind in m/s where they are known. */
export interface HotAir {
  readonly high: number;
  readonly humidity: number | undefined;
  readonly wind: number | undefined;
}

/** Facts and figures that `heatLevelOf` reads; a fact that uses it declares them. */
export const heatNeeds = ['place', 'weight-for-heat'];
export const heatWants = ['feathered', 'brooder-target-high'];
export const heatFigures = [
  'weather/heat-watch',
  'weather/heat-act',
  'weather/heat-danger',
  'weather/above-warm-spot',
  'weather/stressed-from',
  'water/hot-day',
];

/** Dry heat is heat too: where the humidity is not known, the index is that of the driest air, which it is at least. */
const indexOf = ({ high, humidity, wind }: HotAir): number => {
  const still = heatIndex(high, wetBulb(...intoWetBulbRange(high, humidity ?? wetBulbRange.humidity[0])));
  // A pen breaks the wind, so that wind is not counted as relief; still air is counted as the burden it is.
  return wind === undefined ? still : still * Math.max(1, movingAirFactor(wind));
};

const levelFeathered = (read: Reader, index: number, air: HotAir): Level => {
  const byThermometer = (figure: string): boolean =>
    air.humidity === undefined && air.high >= read.figure(figure);
  if (index >= read.figure('weather/heat-danger')) return 'danger';
  if (index >= read.figure('weather/heat-act') || byThermometer('weather/stressed-from')) return 'act';
  return index >= read.figure('weather/heat-watch') || byThermometer('water/hot-day') ? 'watch' : 'calm';
};

/** Chicks in down want warmth: only air above their warm spot is too much. */
const levelDowny = (read: Reader, high: number, warmest: number): Level => {
  if (high >= warmest + read.figure('weather/above-warm-spot')) return 'danger';
  return high > warmest ? 'act' : 'calm';
};

/** The level of heat for the group in such air; `index` is the heat index where it is known already. */
export const heatLevelOf = (read: Reader, air: HotAir, index = indexOf(air)): Level => {
  const warmest = read.maybe('brooder-target-high');
  const isDowny = read.text('place') === 'brooder' && read.maybe('feathered') === false;
  return isDowny && typeof warmest === 'number'
    ? levelDowny(read, air.high, warmest)
    : levelFeathered(read, index, air);
};

const known = (read: Reader, fact: string): number | undefined => {
  const value = read.maybe(fact);
  return typeof value === 'number' ? value : undefined;
};

export const heatFacts = [
  defineFact({
    id: 'wet-bulb',
    unit: 'C',
    per: 'flock',
    needs: ['today-high', 'humidity'],
    compute: (read) => {
      const [high, humidity] = [read.number('today-high'), read.number('humidity')];
      const [air, damp] = intoWetBulbRange(high, humidity);
      read.assume('humidity-of-the-hot-hours', { humidity: { value: humidity, unit: 'ratio' } });
      if (air !== high || damp !== humidity)
        read.assume('wet-bulb-at-its-end', {
          air: { value: air, unit: 'C' },
          humidity: { value: damp, unit: 'ratio' },
        });
      return wetBulb(air, damp);
    },
  }),
  defineFact({
    id: 'thi',
    unit: 'C',
    per: 'flock',
    needs: ['today-high', 'wet-bulb'],
    compute: (read) => heatIndex(read.number('today-high'), read.number('wet-bulb')),
  }),
  defineFact({
    id: 'heat-index',
    unit: 'C',
    per: 'flock',
    needs: ['today-high'],
    wants: ['thi', 'humidity', 'wind-today'],
    compute: (read) => {
      const thi = known(read, 'thi');
      const wind = known(read, 'wind-today');
      if (thi !== undefined) return thi * Math.max(1, wind === undefined ? 1 : movingAirFactor(wind));
      return indexOf({ high: read.number('today-high'), humidity: undefined, wind });
    },
  }),
  defineFact({
    id: 'heat-sum',
    unit: 'point',
    per: 'flock',
    needs: ['today-high', 'humidity'],
    // The rule of thumb adds degrees Fahrenheit and percent as they stand.
    compute: (read) => read.number('today-high') * 1.8 + 32 + read.number('humidity') * 100,
  }),
  defineFact({
    id: 'weight-for-heat',
    unit: 'kg',
    wants: ['live-weight'],
    figures: ['weather/heavy-bird'],
    compute: (read) => {
      const weight = known(read, 'live-weight');
      if (weight !== undefined) return weight;
      const heavy = read.figure('weather/heavy-bird');
      read.assume('weighed-as-heavy', { weight: { value: heavy, unit: 'kg' } });
      return heavy;
    },
  }),
  defineFact({
    id: 'heat-level',
    unit: null,
    needs: [...heatNeeds, 'today-high', 'heat-index'],
    wants: [...heatWants, 'humidity'],
    figures: heatFigures,
    compute: (read) => {
      const high = read.number('today-high');
      if (read.text('place') === 'brooder')
        read.assume('brooder-as-hot-as-outside', { high: { value: high, unit: 'C' } });
      const air = { high, humidity: known(read, 'humidity'), wind: undefined };
      // In air full of water the index is the air itself: below that the humidity cannot matter.
      if (air.humidity === undefined && high >= read.figure('weather/heat-watch'))
        read.assume('driest-air', { humidity: { value: wetBulbRange.humidity[0], unit: 'ratio' } });
      return heatLevelOf(read, air, read.number('heat-index'));
    },
  }),
];
