/** Feed in hand by ration: what the groups have taken of each, and what is left of each. */
import { daysBetween } from '../../day.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { massBought } from '../feed/bags.ts';
import { eaterEach } from '../feed/eater.ts';
import { type Ration, rationByAge, rationFigures, rations } from '../feed/ration.ts';
import { type Bin, binOf, bins, emptyStock, leftOf, massIn, type Stock } from './bins.ts';
import { ownTaken, ownTakenFigures, ownTakenWants } from './own-taken.ts';
import { boughtSince, massOf, type Start, startOf } from './taken.ts';

/** What went into each bin. A count of the stock says nothing of rations. */
const stockPut = (read: Reader, { after, mass }: Start): Stock => {
  const put = { ...emptyStock(), plain: mass };
  for (const each of boughtSince(read, after))
    put[binOf(each.ration ?? each.what)] += massBought(each, read.number('bag-mass')) ?? 0;
  return put;
};

/** A thousandth of a gram: what floating point may make of a sum. */
const aHair = 1e-6;

const takenOf = (ration: Ration): Fact =>
  defineFact({
    id: `${ration}-taken`,
    unit: 'kg',
    needs: ['feed-counted-from'],
    each: eaterEach,
    wants: ownTakenWants,
    figures: [...ownTakenFigures, ...rationFigures],
    compute: (read) => {
      const start = startOf(read);
      if (start === undefined) return undefined;
      const rationFor = rationByAge(read);
      return massOf(
        ownTaken(read, start.after).taken.filter(
          ({ on }) => rationFor(daysBetween(read.group.hatched, on)) === ration,
        ),
      );
    },
  });

const binLeft = (bin: Bin): Fact =>
  defineFact({
    id: `${bin}-left`,
    unit: 'kg',
    per: 'flock',
    needs: ['feed-counted-from', 'bag-mass', 'feed-left'],
    each: rations.map((ration) => `${ration}-taken`),
    compute: (read) => {
      const start = startOf(read);
      if (start === undefined) return undefined;
      const taken = { starter: 0, grower: 0, finisher: 0 };
      for (const ration of rations)
        for (const { value } of read.each(`${ration}-taken`)) taken[ration] += Number(value ?? 0);
      const left = leftOf(stockPut(read, start), taken);
      const isCounted = Math.abs(massIn(left) - read.number('feed-left')) < aHair;
      // A stock that is only supposed says nothing of rations.
      return (isCounted ? left : { ...emptyStock(), plain: read.number('feed-left') })[bin];
    },
  });

export const rationStockFacts = [...rations.map(takenOf), ...bins.map(binLeft)];
