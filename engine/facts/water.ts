/** How much a group drinks in a day, and how often the drinkers want filling for it. */
import { defineFact, type Reader } from './define.ts';
import { intakeFigures, intakeLine } from './feed/intake.ts';
import { settingNumber } from './setting.ts';

const daysInWeek = 7;

/** Feed of a day at an age by the table, kg a bird. */
const dayOf = (read: Reader, line: string, sexes: string, age: number): number => {
  const eaten = intakeLine(read, line, sexes, age);
  return eaten(age + 1) - eaten(age);
};

/**
 * How a slower kind compares with the fast birds of the water table: as its feed does, since birds drink with what they
 * eat. Outside the ages of the table it compares as at the end of it.
 */
const besideFast = (read: Reader): number => {
  const line = read.text('growth-line');
  if (line === 'fast') return 1;
  const [first, last] = read.spanOf('water/by-age').map((week) => week * daysInWeek) as [number, number];
  const age = Math.min(Math.max(read.number('age'), first), last - 1);
  return dayOf(read, line, read.text('sexes'), age) / dayOf(read, 'fast', 'mixed', age);
};

export const waterFacts = [
  defineFact({
    id: 'water-per-bird',
    unit: 'l',
    needs: ['age', 'growth-line', 'sexes'],
    figures: ['water/by-age', ...intakeFigures],
    compute: (read) => (read.number('age') < 0 ? 0 : read.figure('water/by-age') * besideFast(read)),
  }),
  defineFact({
    id: 'water-heat-factor',
    unit: 'ratio',
    per: 'flock',
    wants: ['today-high'],
    figures: ['water/heat-from', 'water/heat-adds'],
    compute: (read) => {
      const mild = read.figure('water/heat-from');
      const high = read.maybe('today-high');
      if (high === undefined) read.assume('mild-day', { mild: { value: mild, unit: 'C' } });
      return 1 + Math.max(0, Number(high ?? mild) - mild) * read.figure('water/heat-adds');
    },
  }),
  defineFact({
    id: 'water-from-table',
    unit: 'l',
    needs: ['water-per-bird', 'alive', 'water-heat-factor'],
    compute: (read) =>
      read.number('water-per-bird') * read.number('alive') * read.number('water-heat-factor'),
  }),
  defineFact({
    id: 'water-from-feed',
    unit: 'l',
    needs: ['feed-today', 'water-heat-factor'],
    figures: ['water/least-with-feed'],
    // A litre of water weighs a kilogram, so that a ratio by weight is one of litres to kilograms.
    compute: (read) =>
      read.number('feed-today') * read.figure('water/least-with-feed') * read.number('water-heat-factor'),
  }),
  defineFact({
    id: 'water-per-day',
    unit: 'l',
    needs: ['water-from-table', 'water-from-feed'],
    compute: (read) => Math.max(read.number('water-from-table'), read.number('water-from-feed')),
  }),
  defineFact({
    id: 'water-by-feed',
    unit: 'ratio',
    needs: ['water-per-day', 'feed-today'],
    compute: (read) =>
      read.number('feed-today') === 0 ? undefined : read.number('water-per-day') / read.number('feed-today'),
  }),
  defineFact({
    id: 'water-with-spills',
    unit: 'l',
    needs: ['feed-today', 'water-heat-factor'],
    figures: ['water/spilled-on-grass'],
    compute: (read) =>
      read.number('feed-today') * read.figure('water/spilled-on-grass') * read.number('water-heat-factor'),
  }),
  defineFact({
    id: 'drinkers',
    unit: 'drinker',
    per: 'flock',
    compute: (read) => settingNumber(read, 'drinkers'),
  }),
  defineFact({
    id: 'drinker-size',
    unit: 'l',
    per: 'flock',
    compute: (read) => settingNumber(read, 'drinker-size'),
  }),
  defineFact({
    id: 'drinker-fills',
    unit: 'fill',
    needs: ['water-per-day', 'alive', 'birds-on-feed', 'drinkers', 'drinker-size'],
    wants: ['today-high'],
    figures: ['water/hot-day', 'water/fills-when-hot'],
    compute: (read) => {
      // Where there are several groups, each is taken to have its part of the drinkers by its birds.
      const all = read.number('birds-on-feed');
      const room =
        all === 0 ? 0 : (read.number('drinkers') * read.number('drinker-size') * read.number('alive')) / all;
      if (room <= 0) return undefined;
      const fills = Math.ceil(read.number('water-per-day') / room - 1e-9);
      const high = read.maybe('today-high');
      const isHot = high !== undefined && Number(high) >= read.figure('water/hot-day');
      return isHot ? Math.max(fills, read.figure('water/fills-when-hot')) : fills;
    },
  }),
];
