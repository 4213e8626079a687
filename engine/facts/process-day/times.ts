/** The clock of the processing day, counted back from its start and on to its end. */
import { addDays } from '../../day.ts';
import { addHours, timeOn } from '../clock.ts';
import { defineFact, type Fact } from '../define.ts';
import { chillFigures, chillSpan } from '../keeping/chill.ts';
import { settingOf } from '../setting.ts';

const hoursInDay = 24;
const fastFigures = [
  'process/feed-off',
  'process/feed-off-least',
  'process/feed-off-most',
  'process/feed-off-hot-adds',
  'process/feed-passes-slowly',
];

/** A time so long before the start. */
const before = (id: string, figure: string): Fact =>
  defineFact({
    id,
    unit: 'date-time',
    needs: ['process-start'],
    figures: [figure],
    compute: (read) => addHours(read.text('process-start'), -read.figure(figure) * hoursInDay),
  });

export const timeFacts = [
  defineFact({
    id: 'process-at',
    unit: null,
    per: 'flock',
    figures: ['process/usual-start'],
    compute: (read) => {
      const set = settingOf(read, 'process-at')?.value;
      if (typeof set === 'string') return set;
      const at = timeOn(read.on, read.figure('process/usual-start') * hoursInDay).slice(11);
      read.assume('usual-start', { at: { value: at, unit: null } });
      return at;
    },
  }),
  defineFact({
    id: 'process-start',
    unit: 'date-time',
    needs: ['process-date', 'process-at', 'process-is-dated'],
    compute: (read) =>
      read.text('process-is-dated') === 'yes'
        ? `${read.text('process-date')}T${read.text('process-at')}`
        : undefined,
  }),
  defineFact({
    id: 'hours-without-feed',
    unit: 'day',
    needs: ['process-high'],
    figures: fastFigures,
    compute: (read) => {
      const usual = Math.min(
        Math.max(read.figure('process/feed-off'), read.figure('process/feed-off-least')),
        read.figure('process/feed-off-most'),
      );
      const isHot = read.number('process-high') > read.figure('process/feed-passes-slowly');
      return isHot ? usual + read.figure('process/feed-off-hot-adds') : usual;
    },
  }),
  defineFact({
    id: 'feed-off',
    unit: 'date-time',
    needs: ['process-start', 'hours-without-feed'],
    compute: (read) => addHours(read.text('process-start'), -read.number('hours-without-feed') * hoursInDay),
  }),
  before('feed-off-earliest', 'process/feed-off-most'),
  before('feed-off-latest', 'process/feed-off-least'),
  before('catch-at', 'process/catch-before'),
  before('set-up-at', 'process/set-up'),
  defineFact({
    id: 'finish',
    unit: 'date-time',
    needs: ['process-start', 'process-span'],
    compute: (read) => addHours(read.text('process-start'), read.number('process-span') * hoursInDay),
  }),
  defineFact({
    id: 'last-without-feed',
    unit: 'day',
    needs: ['hours-without-feed', 'process-span'],
    compute: (read) => read.number('hours-without-feed') + read.number('process-span'),
  }),
  defineFact({
    id: 'last-feed-off',
    unit: 'date-time',
    needs: ['finish', 'hours-without-feed'],
    compute: (read) => addHours(read.text('finish'), -read.number('hours-without-feed') * hoursInDay),
  }),
  defineFact({
    id: 'chilled-by',
    unit: 'date-time',
    needs: ['finish', 'carcass-on-the-day'],
    figures: chillFigures,
    compute: (read) =>
      addHours(read.text('finish'), chillSpan(read, read.number('carcass-on-the-day')) * hoursInDay),
  }),
  defineFact({
    id: 'freeze-from',
    unit: 'date-time',
    needs: ['finish'],
    figures: ['keep/rest'],
    compute: (read) => addHours(read.text('finish'), read.figure('keep/rest') * hoursInDay),
  }),
  defineFact({
    id: 'book-by',
    unit: 'date',
    needs: ['process-date'],
    figures: ['process/booking-lead'],
    compute: (read) => addDays(read.text('process-date'), -read.figure('process/booking-lead')),
  }),
];
