/** What a bag holds, what feed costs, and whole bags for an amount. */
import type { FromEntry, Purchase } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { settingOf } from '../setting.ts';
import { sumMoney, timesMoney } from '../sums/exact-money.ts';
import { rations } from './ration.ts';

/** Whether a purchase is feed, also where only the ration was named. */
export const isFeed = (purchase: Purchase): boolean =>
  purchase.what === 'feed' || purchase.ration !== null || rations.some((ration) => ration === purchase.what);

/** Feed bought, kg; undefined where neither mass nor bags were said. */
export const massBought = (purchase: Purchase, bag: number): number | undefined =>
  purchase.mass ?? (purchase.bags === null ? undefined : purchase.bags * bag);

/** Whole bags that hold a mass; a hair over a full bag from rounding does not open another. */
export const bagsFor = (mass: number, bag: number): number => Math.max(0, Math.ceil(mass / bag - 1e-9));

/** Whether one entry was told after another: the line settles the order of a day. */
export const isAfter = (a: FromEntry, b: FromEntry): boolean =>
  a.on > b.on || (a.on === b.on && a.line > b.line);

const latest = <T extends FromEntry>(entries: readonly T[]): T | undefined =>
  entries.reduce<T | undefined>(
    (best, each) => (best === undefined || isAfter(each, best) ? each : best),
    undefined,
  );

const usualBag = (read: Reader): number => {
  const isMetric = settingOf(read, 'units-system')?.value === 'metric';
  const bag = isMetric ? read.figure('feed/bag-metric') : read.figure('feed/bag-us');
  read.assume('usual-bag', { bag: { value: bag, unit: 'kg' } });
  return bag;
};

export const bagFacts = [
  defineFact({
    id: 'bag-mass',
    unit: 'kg',
    per: 'flock',
    figures: ['feed/bag-us', 'feed/bag-metric'],
    compute: (read) => {
      const set = settingOf(read, 'bag');
      if (typeof set?.value === 'number' && set.value > 0) return set.value;
      const bought = latest(
        read.state.purchases.filter((each) => isFeed(each) && (each.mass ?? 0) > 0 && (each.bags ?? 0) > 0),
      );
      if (bought === undefined) return usualBag(read);
      read.from(bought);
      return Number(bought.mass) / Number(bought.bags);
    },
  }),
  defineFact({
    id: 'bag-price',
    unit: 'money',
    per: 'flock',
    needs: ['bag-mass'],
    compute: (read) => {
      const bag = read.number('bag-mass');
      const bought = latest(
        read.state.purchases.filter(
          (each) => isFeed(each) && each.price !== null && (massBought(each, bag) ?? 0) > 0,
        ),
      );
      const set = read.state.settings['feed-price']?.at(-1);
      if (set !== undefined && (bought === undefined || isAfter(set, bought))) {
        read.from(set);
        return sumMoney([Number(set.value)]);
      }
      if (bought === undefined) return undefined;
      read.from(bought);
      return timesMoney(bought.price ?? 0, bag / Number(massBought(bought, bag)));
    },
  }),
  defineFact({
    id: 'feed-price',
    unit: 'money/kg',
    per: 'flock',
    needs: ['bag-price', 'bag-mass'],
    compute: (read) => read.number('bag-price') / read.number('bag-mass'),
  }),
  defineFact({
    id: 'feed-bags',
    unit: 'bag',
    needs: ['feed-over-span', 'bag-mass'],
    compute: (read) => bagsFor(read.number('feed-over-span'), read.number('bag-mass')),
  }),
];
