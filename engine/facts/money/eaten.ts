/** How much feed a batch has eaten, how much it will still eat, and what comes of it: birds and meat at the end. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { daysFromTo, latestOf } from '../feed/days.ts';
import { type Eater, eaterEach, eaterFigures, eatersOf } from '../feed/eater.ts';
import { givenOn } from '../feed/given.ts';
import { batchFigures, eatenByBatch } from '../feed-stock/batch-eaten.ts';
import { massOf } from '../feed-stock/taken.ts';
import { flockPace, paceFigures, paceNeeds } from '../growth/live.ts';

type Eaters = readonly (Eater | undefined)[];

const ownIn = (read: Reader, eaters: Eaters): Eater | undefined =>
  eaters.find((eater) => eater?.group.name === read.group.name);

/** The fact that says what the birds still to come dress to: on the day set, when they are ready, or when held to the very last. */
const carcassFact = (read: Reader): string => {
  if (read.maybe('process-booked') !== undefined) return 'carcass-on-the-day';
  const ready = read.maybe('ready-on');
  if (ready === undefined) return 'carcass-at-last';
  return String(ready) > read.asked ? 'wanted-carcass' : 'carcass-weight';
};

export const eatenFacts = [
  defineFact({
    id: 'feed-eaten',
    unit: 'kg',
    each: eaterEach,
    wants: ['loss-rate', 'bag-mass'],
    figures: [...eaterFigures, ...batchFigures],
    compute: (read) => {
      const eaters = eatersOf(read, eaterEach);
      const own = ownIn(read, eaters);
      if (own === undefined) return undefined;
      return massOf(eatenByBatch(read, own, eaters));
    },
  }),
  defineFact({
    id: 'table-until',
    unit: 'date',
    needs: ['alive'],
    wants: ['table-day', 'held-until', 'kept-back'],
    compute: (read): Day | undefined => {
      if (read.number('alive') - Number(read.maybe('kept-back') ?? 0) <= 0) return read.asked;
      const end = read.maybe('table-day') ?? read.maybe('held-until');
      return end === undefined ? undefined : latestOf(String(end), addDays(read.asked, 1));
    },
  }),
  defineFact({
    id: 'feed-to-come',
    unit: 'kg',
    needs: ['table-until', 'alive'],
    each: eaterEach,
    wants: ['loss-rate', 'kept-back'],
    figures: eaterFigures,
    compute: (read) => {
      const eaters = eatersOf(read, eaterEach);
      const own = ownIn(read, eaters);
      if (own === undefined) return undefined;
      const given = givenOn(read, eaters);
      const alive = read.number('alive');
      const forTable = alive <= 0 ? 0 : 1 - Number(read.maybe('kept-back') ?? 0) / alive;
      const need = (day: Day): number =>
        day === read.asked && given(own, day) !== undefined ? 0 : own.all(day) * forTable;
      return daysFromTo(read.asked, addDays(read.text('table-until'), -1)).reduce(
        (sum, day) => sum + need(day),
        0,
      );
    },
  }),
  defineFact({
    id: 'feed-in-all',
    unit: 'kg',
    needs: ['feed-eaten', 'feed-to-come'],
    compute: (read) => read.number('feed-eaten') + read.number('feed-to-come'),
  }),
  defineFact({
    id: 'birds-to-come',
    unit: 'bird',
    needs: ['alive', 'kept-back', 'loss-to-come'],
    compute: (read) =>
      Math.max(0, read.number('alive') - read.number('kept-back')) * (1 - read.number('loss-to-come')),
  }),
  defineFact({
    id: 'birds-at-end',
    unit: 'bird',
    needs: ['processed', 'birds-to-come'],
    compute: (read) => read.number('processed') + read.number('birds-to-come'),
  }),
  defineFact({
    id: 'carcass-by-growth',
    unit: 'kg',
    needs: [...paceNeeds, 'dressing-share'],
    figures: paceFigures,
    compute: (read) => {
      const { processed, hatched } = read.group;
      const birds = processed.reduce((sum, each) => sum + each.count, 0);
      if (birds === 0) return undefined;
      const { middle } = flockPace(read);
      const live = processed.reduce(
        (sum, each) => sum + each.count * middle(daysBetween(hatched, each.on)),
        0,
      );
      return (live / birds) * read.number('dressing-share');
    },
  }),
  defineFact({
    id: 'carcass-mean',
    unit: 'kg',
    wants: ['carcass-by-growth'],
    compute: (read) => {
      const weighed = read.group.processed.filter((each) => each.dressed !== null);
      const birds = weighed.reduce((sum, each) => sum + each.count, 0);
      read.from(...weighed);
      if (birds > 0) return weighed.reduce((sum, each) => sum + Number(each.dressed), 0) / birds;
      const byGrowth = read.maybe('carcass-by-growth');
      if (byGrowth !== undefined) read.assume('carcass-by-growth', { each: { value: byGrowth, unit: 'kg' } });
      return byGrowth;
    },
  }),
  defineFact({
    id: 'carcass-so-far',
    unit: 'kg',
    needs: ['processed'],
    wants: ['carcass-mean'],
    compute: (read) => {
      if (read.number('processed') === 0) return 0;
      const mean = read.maybe('carcass-mean');
      return mean === undefined ? undefined : Number(mean) * read.number('processed');
    },
  }),
  defineFact({
    id: 'carcass-in-all',
    unit: 'kg',
    needs: ['carcass-so-far', 'birds-to-come'],
    wants: [
      'process-booked',
      'carcass-on-the-day',
      'ready-on',
      'carcass-weight',
      'wanted-carcass',
      'carcass-at-last',
    ],
    compute: (read) => {
      const birds = read.number('birds-to-come');
      if (birds <= 0) return read.number('carcass-so-far');
      const each = read.maybe(carcassFact(read));
      return each === undefined ? undefined : read.number('carcass-so-far') + birds * Number(each);
    },
  }),
];
