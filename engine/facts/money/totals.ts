/** What the batches asked about have cost and will cost, all lines together, by the bird and by the weight of meat. */
import { defineFact, type Fact, type Reader } from '../define.ts';
import { isFeed } from '../feed/bags.ts';
import { asNamed } from '../named-list.ts';
import { lessMoney, partMoney, sumMoney } from '../sums/exact-money.ts';
import { feedCarried, feedCarriedWants } from './left-over.ts';
import {
  countedGroups,
  ownChicks,
  ownRun,
  ownSeason,
  purchasesOf,
  seasonFigures,
  seasonsOf,
} from './season.ts';
import {
  boughtOn,
  costLines,
  lineOf,
  paidFor,
  partOfBought,
  shareByBirds,
  shareByFeed,
  shareOfBills,
} from './sharing.ts';

const lineIds = costLines.map((line) => `cost-${line}`);

/** Values of a fact for the groups counted; undefined when there are none or one of them is not known. */
const ofCounted = (read: Reader, fact: string): readonly number[] | undefined => {
  const names = countedGroups(read);
  const values = read
    .each(fact)
    .filter(({ group }) => names.includes(group.name))
    .map(({ value }) => value);
  return values.length === 0 || values.some((each) => each === undefined) ? undefined : values.map(Number);
};

const moneyOfCounted = (id: string, fact: string): Fact =>
  defineFact({
    id,
    unit: 'money',
    per: 'flock',
    each: [fact],
    figures: seasonFigures,
    compute: (read) => {
      const values = ofCounted(read, fact);
      return values === undefined ? undefined : sumMoney(values);
    },
  });

const amountOfCounted = (id: string, unit: string, fact: string, toWhole: boolean): Fact =>
  defineFact({
    id,
    unit,
    per: 'flock',
    each: [fact],
    figures: seasonFigures,
    compute: (read) => {
      const sum = ofCounted(read, fact)?.reduce((all, each) => all + each, 0);
      return sum === undefined || !toWhole ? sum : Math.round(sum);
    },
  });

/** Purchases that an answer for the flock counts: those of the season that is on or was last; all while no birds have come. */
const countedPurchases = (read: Reader) => {
  const season = seasonsOf(read).at(-1);
  return season === undefined ? read.state.purchases : purchasesOf(read, season);
};

export const totalFacts = [
  defineFact({
    id: 'batch-cost',
    unit: 'money',
    needs: lineIds,
    compute: (read) => sumMoney(lineIds.map((each) => read.number(each))),
  }),
  defineFact({
    id: 'batch-paid',
    unit: 'money',
    each: ['feed-in-all'],
    wants: ['bag-mass', ...feedCarriedWants],
    figures: seasonFigures,
    compute: (read) => {
      const run = ownRun(read);
      const carried = feedCarried(read);
      const byBirds = (['bedding', 'heat', 'other'] as const).map((line) =>
        partOfBought(read, run, boughtOn(read, run, line), shareByBirds),
      );
      const season = ownSeason(read);
      const bills = boughtOn(read, run, 'processing');
      return sumMoney([
        paidFor(read, ownChicks(read)),
        partOfBought(read, run, boughtOn(read, run, 'feed'), (_, of, paid) =>
          shareByFeed(read, of, sumMoney([paid, carried])),
        ),
        ...byBirds,
        shareOfBills(read, run, bills, read.figure('money/bills-after')),
        partOfBought(read, season, boughtOn(read, season, 'gear'), shareByBirds),
      ]);
    },
  }),
  ...costLines.map((line) => moneyOfCounted(`all-${line}`, `cost-${line}`)),
  moneyOfCounted('projected', 'batch-cost'),
  defineFact({
    id: 'spent',
    unit: 'money',
    per: 'flock',
    each: ['batch-paid'],
    figures: seasonFigures,
    compute: (read) => {
      const bought = countedPurchases(read);
      const unpriced = bought.filter(({ price }) => price === null).length;
      if (unpriced > 0) read.assume('bought-without-price', { times: { value: unpriced, unit: null } });
      if (read.named.length === 0) return paidFor(read, bought);
      const parts = ofCounted(read, 'batch-paid');
      return parts === undefined ? undefined : sumMoney(parts);
    },
  }),
  defineFact({
    id: 'gear-paid',
    unit: 'money',
    per: 'flock',
    figures: seasonFigures,
    compute: (read) =>
      paidFor(
        read,
        countedPurchases(read).filter((each) => lineOf(each) === 'gear'),
      ),
  }),
  defineFact({
    id: 'feed-paid-by-ration',
    unit: 'named',
    per: 'flock',
    figures: seasonFigures,
    compute: (read) => {
      const bought = countedPurchases(read).filter((each) => isFeed(each) && each.price !== null);
      const rations = [...new Set(bought.map(({ ration }) => ration ?? 'feed'))];
      const paidOn = (ration: string): number =>
        paidFor(
          read,
          bought.filter((each) => (each.ration ?? 'feed') === ration),
        );
      return asNamed(rations.map((ration) => `${ration}=${paidOn(ration).toFixed(2)}`));
    },
  }),
  defineFact({
    id: 'birds-begun',
    unit: 'bird',
    per: 'flock',
    each: ['arrived-alive'],
    figures: seasonFigures,
    // None have begun before any come, which is known; what they come to in the end is not.
    compute: (read) =>
      countedGroups(read).length === 0
        ? 0
        : ofCounted(read, 'arrived-alive')?.reduce((all, each) => all + each, 0),
  }),
  amountOfCounted('birds-in-end', 'bird', 'birds-at-end', true),
  amountOfCounted('meat-in-end', 'kg', 'carcass-in-all', false),
  defineFact({
    id: 'cost-per-bird',
    unit: 'money',
    per: 'flock',
    needs: ['projected', 'birds-in-end'],
    compute: (read) =>
      read.number('birds-in-end') > 0
        ? partMoney(read.number('projected'), read.number('birds-in-end'))
        : undefined,
  }),
  defineFact({
    id: 'cost-per-weight',
    unit: 'money/kg',
    per: 'flock',
    needs: ['projected', 'meat-in-end'],
    compute: (read) =>
      read.number('meat-in-end') > 0 ? read.number('projected') / read.number('meat-in-end') : undefined,
  }),
  defineFact({
    id: 'cost-of-losses',
    unit: 'money',
    per: 'flock',
    needs: ['projected', 'cost-per-bird', 'birds-begun', 'birds-in-end'],
    compute: (read) => {
      if (read.number('birds-begun') <= read.number('birds-in-end')) return 0;
      const without = partMoney(read.number('projected'), read.number('birds-begun'));
      return lessMoney(read.number('cost-per-bird'), without);
    },
  }),
];
