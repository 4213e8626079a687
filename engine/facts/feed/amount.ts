/** How much feed a group needs on a day and over a span of days. */
import { addDays, type Day } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { coldFigures, coldShare, hasAir } from './cold.ts';
import { daysFromTo } from './days.ts';
import { eaterFigures, eaterNeeds, eaterOf, eaterWants } from './eater.ts';
import { feedPerWeight, perWeightFigures, publishedIntake, tableEnd } from './intake.ts';

const daysInWeek = 7;
const needs = eaterNeeds;
const wants = eaterWants;
const figures = eaterFigures;

/** The span asked about; the day itself when none is. */
const span = (read: Reader): Day[] => daysFromTo(read.on, read.until ?? read.on);

const sum = (days: readonly Day[], of: (day: Day) => number): number =>
  days.reduce((total, day) => total + of(day), 0);

/** Says for how many days of a span nothing is known of the cold, for birds that live out. */
const assumeMildDays = (read: Reader, days: readonly Day[]): void => {
  const unknown = days.filter((day) => !hasAir(read, day)).length;
  if (read.text('place') === 'pen' && unknown > 0) {
    read.assume('no-cold-on-record', { days: { value: unknown, unit: 'day' } });
  }
};

export const amountFacts = [
  defineFact({
    id: 'span-days',
    unit: 'day',
    compute: (read) => span(read).length,
  }),
  defineFact({
    id: 'past-feed-table',
    unit: null,
    needs: ['growth-line', 'sexes', 'age'],
    figures: ['feed/eaten-by-age', 'feed/per-live-weight-later'],
    compute: (read) => read.number('age') >= tableEnd(read, read.text('growth-line'), read.text('sexes')),
  }),
  defineFact({
    id: 'feed-published-day',
    unit: 'kg',
    needs: ['growth-line', 'sexes', 'age', 'past-feed-table'],
    figures: ['feed/eaten-by-age'],
    // Only fast birds have a published feed table.
    compute: (read) => {
      if (read.text('growth-line') !== 'fast' || read.yes('past-feed-table')) return undefined;
      const eaten = publishedIntake(read, read.text('sexes'), read.number('age'));
      return eaten(read.number('age') + 1) - eaten(read.number('age'));
    },
  }),
  defineFact({
    id: 'feed-per-weight',
    unit: 'ratio',
    needs: ['growth-line', 'age', 'past-feed-table'],
    figures: perWeightFigures,
    compute: (read) => {
      const line = read.text('growth-line');
      const age = read.number('age');
      return line === 'fast' || read.yes('past-feed-table')
        ? undefined
        : feedPerWeight(read, line, age)(age / daysInWeek);
    },
  }),
  defineFact({
    id: 'feed-table-day',
    unit: 'kg',
    needs,
    wants,
    figures,
    compute: (read) => eaterOf(read).byTable(read.on),
  }),
  defineFact({
    id: 'feed-per-bird-day',
    unit: 'kg',
    needs,
    wants,
    figures,
    compute: (read) => eaterOf(read).perBird(read.on),
  }),
  defineFact({
    id: 'feed-today',
    unit: 'kg',
    needs: ['feed-per-bird-day', 'alive'],
    compute: (read) => read.number('feed-per-bird-day') * read.number('alive'),
  }),
  defineFact({
    id: 'feed-cold-extra',
    unit: 'ratio',
    needs: ['place'],
    figures: coldFigures,
    compute: (read) => {
      const days = span(read);
      return read.text('place') !== 'pen' || days.length === 0
        ? 0
        : sum(days, (day) => coldShare(read, day)) / days.length;
    },
  }),
  defineFact({
    id: 'feed-per-bird',
    unit: 'kg',
    needs,
    wants,
    figures,
    compute: (read) => sum(span(read), eaterOf(read).perBird),
  }),
  defineFact({
    id: 'feed-over-span',
    unit: 'kg',
    needs,
    wants,
    figures,
    compute: (read) => {
      const days = span(read);
      assumeMildDays(read, days);
      if (days.length > 1)
        read.assume(read.maybe('loss-rate') === undefined ? 'no-losses-counted' : 'losses-as-usual');
      return sum(days, eaterOf(read).all);
    },
  }),
  defineFact({
    id: 'feed-next-week',
    unit: 'kg',
    needs,
    wants,
    figures,
    compute: (read) => sum(daysFromTo(read.on, addDays(read.on, daysInWeek - 1)), eaterOf(read).perBird),
  }),
];
