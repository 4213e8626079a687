/** How long the work takes with the hands and the gear there are. */
import { defineFact, type Reader } from '../define.ts';
import { settingFlag, settingNumber } from '../setting.ts';

const hoursInDay = 24;

/** Days of work that so many birds take at a pace in birds an hour. */
const spanAt = (read: Reader, pace: number): number =>
  read.number('birds-on-the-day') / (pace * read.number('hands')) / hoursInDay;

export const workFacts = [
  defineFact({
    id: 'helpers',
    unit: 'person',
    per: 'flock',
    compute: (read) => settingNumber(read, 'helpers'),
  }),
  defineFact({
    id: 'hands',
    unit: 'person',
    per: 'flock',
    wants: ['helpers'],
    figures: ['process/usual-hands'],
    compute: (read) => {
      const helpers = read.maybe('helpers');
      // The keeper works too.
      if (typeof helpers === 'number') return helpers + 1;
      const usual = read.figure('process/usual-hands');
      read.assume('usual-hands', { hands: { value: usual, unit: 'person' } });
      return usual;
    },
  }),
  defineFact({
    id: 'plucker',
    unit: null,
    per: 'flock',
    compute: (read) => {
      const there = settingFlag(read, 'plucker');
      if (there === undefined) read.assume('plucked-by-hand');
      return there === true ? 'yes' : 'no';
    },
  }),
  defineFact({
    id: 'birds-per-hour',
    unit: 'bird-per-hour',
    per: 'flock',
    needs: ['hands', 'plucker'],
    figures: ['process/birds-per-hour'],
    compute: (read) => read.number('hands') * read.figure('process/birds-per-hour'),
  }),
  defineFact({
    id: 'process-span',
    unit: 'day',
    needs: ['birds-on-the-day', 'hands', 'plucker'],
    figures: ['process/birds-per-hour'],
    compute: (read) =>
      read.number('hands') <= 0 ? undefined : spanAt(read, read.figure('process/birds-per-hour')),
  }),
  defineFact({
    id: 'span-with-plucker',
    unit: 'day',
    needs: ['birds-on-the-day', 'hands'],
    figures: ['process/birds-per-hour'],
    compute: (read) =>
      read.number('hands') <= 0 ? undefined : spanAt(read, read.figure('process/birds-per-hour', ['yes'])),
  }),
  defineFact({
    id: 'bird-every',
    unit: 'day',
    per: 'flock',
    needs: ['birds-per-hour'],
    compute: (read) =>
      read.number('birds-per-hour') <= 0 ? undefined : 1 / read.number('birds-per-hour') / hoursInDay,
  }),
  defineFact({
    id: 'process-days',
    unit: 'day',
    needs: ['process-span'],
    figures: ['process/longest-day'],
    compute: (read) => Math.ceil(read.number('process-span') / read.figure('process/longest-day') - 1e-9),
  }),
  defineFact({
    id: 'birds-a-day',
    unit: 'bird',
    needs: ['birds-on-the-day', 'process-days'],
    compute: (read) => Math.ceil(read.number('birds-on-the-day') / Math.max(1, read.number('process-days'))),
  }),
];
