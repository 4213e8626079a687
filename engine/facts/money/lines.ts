/** What a batch costs, line by line: its own chicks, and its part of all else that was bought for the batches it was with. */
import { addDays, daysBetween } from '../../day.ts';
import type { Purchase } from '../../types.ts';
import { defineFact, type Fact, type Reader } from '../define.ts';
import { massBought } from '../feed/bags.ts';
import { settingNumber } from '../setting.ts';
import { sumMoney, timesMoney } from '../sums/exact-money.ts';
import { feedCarried, feedCarriedWants } from './left-over.ts';
import { ownChicks, ownRun, ownSeason, type Run, runFigures, seasonFigures, seasonsOf } from './season.ts';
import {
  boughtOn,
  type CostLine,
  paidFor,
  partOfBought,
  shareByBirds,
  shareByFeed,
  shareOfBills,
} from './sharing.ts';

const hoursInDay = 24;

/** A line whose purchases are shared by birds. */
const shared = (id: string, line: CostLine): Fact =>
  defineFact({
    id,
    unit: 'money',
    figures: runFigures,
    compute: (read) => {
      const run = ownRun(read);
      return partOfBought(read, run, boughtOn(read, run, line), shareByBirds);
    },
  });

/** Says where less feed is on record as bought than the batches that are over must have eaten. */
const assumeShort = (read: Reader, { groups }: Run, bought: readonly Purchase[]): void => {
  const names = groups.map(({ name }) => name);
  const eaten = read
    .each('feed-in-all')
    .filter(({ group }) => names.includes(group.name))
    .reduce((sum, { value }) => sum + Number(value ?? 0), 0);
  const bag = Number(read.maybe('bag-mass') ?? 0);
  const mass = bought.reduce((sum, each) => sum + (massBought(each, bag) ?? 0), 0);
  if (mass >= eaten * read.figure('feed/records-whole')) return;
  read.assume('feed-bought-is-short', {
    bought: { value: mass, unit: 'kg' },
    eaten: { value: eaten, unit: 'kg' },
  });
};

export const lineFacts = [
  defineFact({
    id: 'cost-chicks',
    unit: 'money',
    figures: runFigures,
    compute: (read) => {
      const bought = ownChicks(read);
      if (!bought.some(({ price }) => price !== null)) read.assume('chicks-without-price');
      return paidFor(read, bought);
    },
  }),
  defineFact({
    id: 'cost-feed',
    unit: 'money',
    each: ['feed-in-all'],
    wants: ['feed-price', 'feed-to-end-cost', 'bag-mass', ...feedCarriedWants],
    figures: [...runFigures, 'feed/records-whole'],
    compute: (read) => {
      const run = ownRun(read);
      const bought = boughtOn(read, run, 'feed').filter(({ price }) => price !== null);
      const carried = feedCarried(read);
      if (bought.length > 0 || carried > 0) {
        const toCome = run.until === undefined ? read.maybe('feed-to-end-cost') : 0;
        if (toCome === undefined) return undefined;
        if (run.until !== undefined) assumeShort(read, run, bought);
        return partOfBought(read, run, bought, (_, of, paid) =>
          shareByFeed(read, of, sumMoney([paid, Number(toCome), carried])),
        );
      }
      const price = read.maybe('feed-price');
      const own = read.each('feed-in-all').find(({ group }) => group.name === read.group.name)?.value;
      if (price === undefined || own === undefined) return undefined;
      read.assume('feed-at-the-price-set');
      return timesMoney(1, Number(own) * Number(price));
    },
  }),
  shared('cost-bedding', 'bedding'),
  shared('cost-other', 'other'),
  defineFact({
    id: 'cost-gear',
    unit: 'money',
    figures: [...seasonFigures, 'money/gear-seasons'],
    compute: (read) => {
      const own = ownSeason(read);
      const lasts = read.figure('money/gear-seasons');
      const seasons = seasonsOf(read);
      const now = seasons.findIndex(({ from }) => from === own.from);
      const inUse = seasons.slice(Math.max(0, now - lasts + 1), now + 1);
      const bought = inUse.flatMap((season) => boughtOn(read, season, 'gear'));
      return partOfBought(read, own, bought, shareByBirds, (paid) => timesMoney(paid, 1 / lasts));
    },
  }),
  defineFact({
    id: 'cost-processing',
    unit: 'money',
    needs: ['processed', 'birds-to-come'],
    figures: runFigures,
    compute: (read) => {
      const run = ownRun(read);
      const bills = boughtOn(read, run, 'processing');
      const paid = shareOfBills(read, run, bills, read.figure('money/bills-after'));
      const fee = settingNumber(read, 'processing-fee');
      if (fee === undefined) return paid;
      // Where bills are on record, the birds processed already are paid for.
      const billed = bills.length > 0 ? 0 : read.number('processed');
      return sumMoney([paid, timesMoney(fee, Math.round(read.number('birds-to-come')) + billed)]);
    },
  }),
  defineFact({
    id: 'labour-price',
    unit: 'money',
    per: 'flock',
    compute: (read) => settingNumber(read, 'labour-price'),
  }),
  defineFact({
    id: 'cost-labour',
    unit: 'money',
    wants: ['labour-price'],
    each: ['table-until'],
    figures: [...runFigures, 'money/chore-time'],
    compute: (read) => {
      const price = read.maybe('labour-price');
      if (typeof price !== 'number') {
        read.assume('own-time-not-counted');
        return 0;
      }
      const run = ownRun(read);
      const names = run.groups.map(({ name }) => name);
      const ends = read
        .each('table-until')
        .filter(({ group, value }) => names.includes(group.name) && value !== undefined)
        .map(({ value }) => String(value));
      const end = run.until ?? ends.sort().at(-1) ?? addDays(read.asked, 1);
      // A round is made once for all that are there, however many batches they are.
      const hours = daysBetween(run.from, end) * read.figure('money/chore-time') * hoursInDay;
      return shareByBirds(read, run, timesMoney(price, hours));
    },
  }),
];
