/** What a cold, wet or windy night is to birds where they live: how cold they can stand it, and a level. */
import { daysBetween } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { nightFigures, nightFloorFor, signsOf } from '../night-floor.ts';
import type { Level } from './level.ts';

/** The air of a night: the coldest of it in °C, rain in mm, wind in m/s. */
export interface ColdAir {
  readonly low: number;
  readonly rain: number;
  readonly wind: number;
}

/** Facts and figures that `coldLevelOf` reads; a fact that uses it declares them. */
export const coldNeeds = ['place', 'feathered'];
export const coldWants = ['brooder-target', 'heatless-floor', 'heat-is-off'];
export const coldLevelFigures = [
  ...nightFigures,
  'pasture/rain-that-wets',
  'pasture/wind-that-chills',
  'pasture/cold-rain',
  'weather/cold-watch',
  'weather/near-floor',
  'weather/far-below-floor',
];

const isWet = (read: Reader, rain: number): boolean => rain >= read.figure('pasture/rain-that-wets');
const isWindy = (read: Reader, wind: number): boolean => wind >= read.figure('pasture/wind-that-chills');

/** The coldest air, °C, that birds in a pen stand in this rain and wind; birds too young for any night want their warm spot. */
const floorOf = (read: Reader, { rain, wind }: Omit<ColdAir, 'low'>): number | undefined => {
  const floor = nightFloorFor(read, {
    harsh: isWet(read, rain) || isWindy(read, wind),
    feathered: read.yes('feathered'),
  });
  const warmSpot = read.maybe('brooder-target');
  return floor ?? (typeof warmSpot === 'number' ? warmSpot : undefined);
};

/** Air, °C, below which a look is worth it: near what they can stand, and never less than is cold for any bird. */
const watchBelow = (read: Reader, floor: number): number =>
  Math.max(floor + read.figure('weather/near-floor'), read.figure('weather/cold-watch'));

const levelInPen = (read: Reader, air: ColdAir): Level | undefined => {
  const floor = floorOf(read, air);
  if (floor === undefined) return undefined;
  const [wet, windy] = [isWet(read, air.rain), isWindy(read, air.wind)];
  if (air.low < floor - read.figure('weather/far-below-floor')) return 'danger';
  if (air.low < floor) return wet && windy ? 'danger' : 'act';
  if (wet && air.low < read.figure('pasture/cold-rain')) return 'act';
  return wet || windy || air.low < watchBelow(read, floor) ? 'watch' : 'calm';
};

/** With the heat on, lamps make up what the surroundings lack, so that a cold night wants no more than a look at them. */
const levelInBrooder = (read: Reader, around: number): Level | undefined => {
  const floor = read.maybe('heatless-floor');
  if (typeof floor !== 'number') return undefined;
  if (around >= floor) return 'calm';
  if (read.maybe('heat-is-off') !== true) return 'watch';
  return around < floor - read.figure('weather/far-below-floor') ? 'danger' : 'act';
};

/** The level of cold for the group in such air; undefined where what they can stand is not known. */
export const coldLevelOf = (read: Reader, air: ColdAir): Level | undefined =>
  read.text('place') === 'brooder' ? levelInBrooder(read, air.low) : levelInPen(read, air);

const numberOr = (read: Reader, fact: string, otherwise: number): number => {
  const value = read.maybe(fact);
  return typeof value === 'number' ? value : otherwise;
};

export const coldFacts = [
  defineFact({
    id: 'birds-wet',
    unit: null,
    compute: (read) => {
      const seen = signsOf(read, 'wet-birds').findLast((each) => daysBetween(each.on, read.on) <= 1);
      if (seen !== undefined) read.from(seen);
      return seen !== undefined;
    },
  }),
  defineFact({
    id: 'coldest-air',
    unit: 'C',
    needs: ['place'],
    wants: ['surroundings', 'tonight-low', 'today-high'],
    compute: (read) => {
      const inBrooder = read.text('place') === 'brooder';
      const low = read.maybe(inBrooder ? 'surroundings' : 'tonight-low');
      const high = read.maybe('today-high');
      if (typeof low !== 'number') {
        if (typeof high !== 'number') return undefined;
        read.assume('no-low-but-high', { high: { value: high, unit: 'C' } });
        return high;
      }
      // A high below the low is a day said to be colder than the night on record.
      return typeof high === 'number' && !inBrooder ? Math.min(low, high) : low;
    },
  }),
  defineFact({
    id: 'chill-floor',
    unit: 'C',
    needs: ['age', 'feathered', 'rain-today'],
    wants: ['wind-today', 'brooder-target'],
    figures: [...nightFigures, 'pasture/rain-that-wets', 'pasture/wind-that-chills'],
    compute: (read) =>
      floorOf(read, { rain: read.number('rain-today'), wind: numberOr(read, 'wind-today', 0) }),
  }),
  defineFact({
    id: 'chill-watch',
    unit: 'C',
    needs: ['chill-floor'],
    figures: ['weather/near-floor', 'weather/cold-watch'],
    compute: (read) => watchBelow(read, read.number('chill-floor')),
  }),
  defineFact({
    id: 'rough-weather',
    unit: null,
    needs: ['rain-today'],
    wants: ['wind-today'],
    figures: ['pasture/rain-that-wets', 'pasture/wind-that-chills'],
    compute: (read) =>
      isWet(read, read.number('rain-today')) || isWindy(read, numberOr(read, 'wind-today', 0)),
  }),
  defineFact({
    id: 'wet-and-cold',
    unit: null,
    needs: ['coldest-air', 'rain-today'],
    figures: ['pasture/rain-that-wets', 'pasture/cold-rain'],
    compute: (read) =>
      isWet(read, read.number('rain-today')) && read.number('coldest-air') < read.figure('pasture/cold-rain'),
  }),
  defineFact({
    id: 'cold-level',
    unit: null,
    needs: [...coldNeeds, 'age', 'coldest-air'],
    wants: [...coldWants, 'rain-today', 'wind-today', 'tonight-low', 'surroundings'],
    figures: coldLevelFigures,
    compute: (read) => {
      const inPen = read.text('place') !== 'brooder';
      const level = coldLevelOf(read, {
        low: read.number('coldest-air'),
        rain: inPen ? numberOr(read, 'rain-today', 0) : 0,
        wind: inPen ? numberOr(read, 'wind-today', 0) : 0,
      });
      const low = read.maybe(inPen ? 'tonight-low' : 'surroundings');
      // The day's high only says that the night is no warmer: it can raise an alarm, but never call one off.
      return low === undefined && level === 'calm' ? undefined : level;
    },
  }),
];
