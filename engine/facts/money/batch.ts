/** How a batch turned out: birds alive to the end, days, carcass, feed and money in each weight of meat. */
import { daysBetween } from '../../day.ts';
import { defineFact } from '../define.ts';
import { lostByCause } from '../losses.ts';

export const batchFacts = [
  defineFact({
    id: 'batch-stage',
    unit: null,
    needs: ['processed', 'birds-for-table'],
    compute: (read) => {
      if (read.number('birds-for-table') > 0) return read.number('processed') > 0 ? 'part' : 'growing';
      return read.number('processed') > 0 ? 'done' : 'none';
    },
  }),
  defineFact({
    id: 'birds-for-table',
    unit: 'bird',
    needs: ['alive', 'kept-back'],
    compute: (read) => Math.max(0, read.number('alive') - read.number('kept-back')),
  }),
  defineFact({
    id: 'batch-survival',
    unit: 'ratio',
    needs: ['arrived-alive', 'lost'],
    compute: (read) =>
      read.number('arrived-alive') > 0 ? 1 - read.number('lost') / read.number('arrived-alive') : undefined,
  }),
  defineFact({
    id: 'batch-days',
    unit: 'day',
    compute: (read) => {
      const last = read.group.processed
        .map(({ on }) => on)
        .sort()
        .at(-1);
      read.from(...read.group.processed);
      return last === undefined ? undefined : daysBetween(read.group.hatched, last);
    },
  }),
  defineFact({
    id: 'batch-feed-ratio',
    unit: 'to-one',
    needs: ['batch-stage'],
    wants: ['feed-eaten', 'carcass-so-far'],
    // While some still grow, their feed has no meat on the other side.
    compute: (read) => {
      if (read.text('batch-stage') !== 'done') return undefined;
      const [eaten, meat] = [read.maybe('feed-eaten'), Number(read.maybe('carcass-so-far') ?? 0)];
      return eaten === undefined || meat <= 0 ? undefined : Number(eaten) / meat;
    },
  }),
  defineFact({
    id: 'batch-live-feed-ratio',
    unit: 'to-one',
    needs: ['batch-feed-ratio', 'dressing-share'],
    compute: (read) => read.number('batch-feed-ratio') * read.number('dressing-share'),
  }),
  defineFact({
    id: 'batch-per-weight',
    unit: 'money/kg',
    needs: ['batch-stage'],
    wants: ['batch-cost', 'carcass-in-all'],
    // Before the first is processed this is a forecast, which is another question.
    compute: (read) => {
      if (!['part', 'done'].includes(read.text('batch-stage'))) return undefined;
      const [cost, meat] = [read.maybe('batch-cost'), Number(read.maybe('carcass-in-all') ?? 0)];
      return cost === undefined || meat <= 0 ? undefined : Number(cost) / meat;
    },
  }),
  defineFact({
    id: 'batch-causes',
    unit: 'named',
    needs: ['lost'],
    compute: (read) => lostByCause(read, read.group.losses),
  }),
];
