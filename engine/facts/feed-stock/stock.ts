/** Feed in hand: what was there, what was bought, and what the groups have taken since. */
import { defineFact } from '../define.ts';
import { massBought } from '../feed/bags.ts';
import { latestOf } from '../feed/days.ts';
import { eaterEach } from '../feed/eater.ts';
import { ownTaken, ownTakenFigures, ownTakenWants } from './own-taken.ts';
import { assumeUnrecorded, boughtSince, massOf, startOf } from './taken.ts';

export const stockFacts = [
  defineFact({
    id: 'feed-stock-told',
    unit: null,
    per: 'flock',
    compute: (read) => startOf(read) !== undefined,
  }),
  defineFact({
    id: 'feed-counted-from',
    unit: 'date',
    per: 'flock',
    compute: (read) => startOf(read)?.after.on,
  }),
  defineFact({
    id: 'feed-taken',
    unit: 'kg',
    needs: ['feed-counted-from'],
    each: eaterEach,
    wants: ownTakenWants,
    figures: ownTakenFigures,
    compute: (read) => {
      const start = startOf(read);
      if (start === undefined) return undefined;
      const { known, taken } = ownTaken(read, start.after);
      if (!known) read.assume('feed-of-unknown-kind');
      assumeUnrecorded(read, latestOf(start.after.on, read.group.arrived), taken);
      return massOf(taken);
    },
  }),
  defineFact({
    id: 'feed-bought',
    unit: 'kg',
    per: 'flock',
    needs: ['feed-counted-from', 'bag-mass'],
    compute: (read) => {
      const start = startOf(read);
      if (start === undefined) return undefined;
      return boughtSince(read, start.after).reduce(
        (sum, each) => sum + (massBought(each, read.number('bag-mass')) ?? 0),
        0,
      );
    },
  }),
  defineFact({
    id: 'feed-told',
    unit: 'kg',
    per: 'flock',
    needs: ['feed-counted-from'],
    compute: (read) => startOf(read)?.mass,
  }),
  defineFact({
    id: 'feed-given',
    unit: 'kg',
    per: 'flock',
    needs: ['feed-counted-from'],
    each: ['feed-taken'],
    compute: (read) => {
      const taken = read.each('feed-taken').map((each) => each.value);
      return taken.some((each) => each === undefined)
        ? undefined
        : taken.reduce<number>((sum, each) => sum + Number(each), 0);
    },
  }),
  defineFact({
    id: 'feed-left',
    unit: 'kg',
    per: 'flock',
    needs: ['feed-told', 'feed-bought', 'feed-given'],
    compute: (read) => {
      const left = read.number('feed-told') + read.number('feed-bought') - read.number('feed-given');
      if (left < 0) read.assume('more-fed-than-bought', { over: { value: -left, unit: 'kg' } });
      return Math.max(0, left);
    },
  }),
];
