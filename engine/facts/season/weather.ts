/** What the usual weather is to one batch: cold around the brooder, nights on grass, heat at the heavy end. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { wholeUp } from '../sums/whole.ts';
import { normalFigures, normalsOf } from './normals.ts';
import { nightFloors } from './stay.ts';

/** Days from one to another, the last left out. */
const daysUntil = (first: Day, last: Day): readonly Day[] =>
  Array.from({ length: Math.max(0, daysBetween(first, last)) }, (_, index) => addDays(first, index));

interface Night {
  readonly on: Day;
  readonly low: number;
  readonly floor: number;
}

/** The night on grass that comes closest to, or furthest below, what birds of that age stand. */
const worstNight = (read: Reader): Night | undefined => {
  const low = normalsOf(read, 'usual-nights');
  const floorAt = nightFloors(read);
  const nights = daysUntil(read.text('batch-out'), read.text('batch-process')).flatMap((on): Night[] => {
    const floor = floorAt(daysBetween(read.group.hatched, on));
    return floor === undefined ? [] : [{ on, low: low(on), floor }];
  });
  return nights.sort((one, other) => one.low - one.floor - (other.low - other.floor))[0];
};

const nightNeeds = ['batch-out', 'batch-process', 'usual-nights'];
const nightFigures = ['pasture/lowest-night', ...normalFigures];

export const batchWeatherFacts = [
  defineFact({
    id: 'batch-first-night',
    unit: 'C',
    needs: ['batch-arrives', 'usual-nights'],
    figures: ['season/first-days', ...normalFigures],
    compute: (read) => {
      const low = normalsOf(read, 'usual-nights');
      const arrives = read.text('batch-arrives');
      const nights = daysUntil(arrives, addDays(arrives, read.figure('season/first-days')));
      return Math.min(...nights.map(low));
    },
  }),
  defineFact({
    id: 'batch-lamps',
    unit: 'lamp',
    needs: ['batch-first-night', 'lamp-watts'],
    figures: ['brooder/chicks-per-lamp', 'brooder/lamp-watts', 'brooder/least-lamps'],
    compute: (read) => {
      const { boxed } = read.group;
      const each = read.figure('brooder/chicks-per-lamp', [read.number('batch-first-night')]);
      const strength = read.number('lamp-watts') / read.figure('brooder/lamp-watts');
      return Math.max(wholeUp(boxed / each / strength), read.figure('brooder/least-lamps', [boxed]));
    },
  }),
  defineFact({
    id: 'batch-night',
    unit: 'C',
    needs: nightNeeds,
    figures: nightFigures,
    compute: (read) => worstNight(read)?.low,
  }),
  defineFact({
    id: 'batch-night-floor',
    unit: 'C',
    needs: nightNeeds,
    figures: nightFigures,
    compute: (read) => worstNight(read)?.floor,
  }),
  defineFact({
    id: 'batch-night-on',
    unit: 'date',
    needs: nightNeeds,
    figures: nightFigures,
    compute: (read) => worstNight(read)?.on,
  }),
  defineFact({
    id: 'batch-heat',
    unit: 'C',
    needs: ['batch-process', 'usual-days'],
    figures: ['season/heavy-days', ...normalFigures],
    compute: (read) => {
      const high = normalsOf(read, 'usual-days');
      const last = read.text('batch-process');
      return Math.max(...daysUntil(addDays(last, -read.figure('season/heavy-days')), last).map(high));
    },
  }),
];
