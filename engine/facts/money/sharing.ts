/** The part of a purchase that each batch bears: by birds, by feed eaten or by birds processed, so that the parts add up. */
import { daysBetween } from '../../day.ts';
import type { Group, Purchase } from '../../types.ts';
import type { Reader } from '../define.ts';
import { isFeed, massBought } from '../feed/bags.ts';
import { shareMoney, sumMoney } from '../sums/exact-money.ts';
import { purchasesOf, type Run } from './season.ts';

/** The lines of a reckoning, in the order in which they are read out. */
export const costLines = [
  'chicks',
  'feed',
  'bedding',
  'heat',
  'gear',
  'processing',
  'labour',
  'other',
] as const;
export type CostLine = (typeof costLines)[number];

const lineByThing: ReadonlyMap<string, CostLine> = new Map([
  ['chicks', 'chicks'],
  ['bedding', 'bedding'],
  ['gear', 'gear'],
  ['processing', 'processing'],
  ['electricity', 'heat'],
]);

/** The line that a purchase belongs to. */
export const lineOf = (purchase: Purchase): CostLine =>
  isFeed(purchase) ? 'feed' : (lineByThing.get(purchase.what) ?? 'other');

/** What was paid, exactly; a purchase without a price counts for nothing. */
export const paidFor = (read: Reader, purchases: readonly Purchase[]): number => {
  read.from(...purchases);
  return sumMoney(purchases.map(({ price }) => price ?? 0));
};

/** What was bought for a run or a season on one line. */
export const boughtOn = (read: Reader, run: Run, line: CostLine): readonly Purchase[] =>
  purchasesOf(read, run).filter((each) => lineOf(each) === line);

/** The part of the group asked about, by a weight of each group; undefined where nothing weighs anything. */
const ownPart = (
  read: Reader,
  { groups }: Run,
  amount: number,
  weigh: (group: Group) => number,
): number | undefined => {
  const weights = groups.map(weigh);
  if (!weights.some((each) => each > 0)) return undefined;
  return shareMoney(amount, weights)[groups.findIndex(({ name }) => name === read.group.name)] ?? 0;
};

/** The group's part of an amount of money by the birds that came. */
export const shareByBirds = (read: Reader, run: Run, amount: number): number =>
  ownPart(read, run, amount, ({ boxed }) => boxed) ?? 0;

/** Feed bought for one group alone, kg. */
const ownFeed = (read: Reader, name: string): number => {
  const bag = Number(read.maybe('bag-mass') ?? 0);
  return read.state.purchases
    .filter((each) => isFeed(each) && each.group === name && each.on <= read.asked)
    .reduce((sum, each) => sum + (massBought(each, bag) ?? 0), 0);
};

/**
 * The same by the feed eaten beyond what was bought for a group alone, where that is known of every group; else by birds.
 * Declares `feed-in-all` in `each` and `bag-mass` in `wants`.
 */
export const shareByFeed = (read: Reader, run: Run, amount: number): number => {
  if (run.groups.length === 1) return amount;
  const eaten = new Map(read.each('feed-in-all').map(({ group, value }) => [group.name, Number(value ?? 0)]));
  if (!run.groups.every(({ name }) => (eaten.get(name) ?? 0) > 0)) return shareByBirds(read, run, amount);
  const ofCommon = ({ name }: Group): number => Math.max(0, (eaten.get(name) ?? 0) - ownFeed(read, name));
  return ownPart(read, run, amount, ofCommon) ?? shareByBirds(read, run, amount);
};

/**
 * The group's part of what was bought for a run: what was bought for it alone, and its share of what was bought for all
 * of them. What was bought for a group that is no more in the run is shared like the rest.
 * @param counted what counts of the money paid
 */
export const partOfBought = (
  read: Reader,
  run: Run,
  bought: readonly Purchase[],
  share: (read: Reader, run: Run, amount: number) => number,
  counted: (paid: number) => number = (paid) => paid,
): number => {
  const isFor = (purchase: Purchase): boolean => run.groups.some(({ name }) => name === purchase.group);
  const own = bought.filter(({ group }) => group === read.group.name);
  const common = bought.filter((each) => !isFor(each));
  return sumMoney([counted(paidFor(read, own)), share(read, run, counted(paidFor(read, common)))]);
};

/** The group's part of the bills for processing, each shared by the birds processed about that day; else by birds. */
export const shareOfBills = (read: Reader, run: Run, bills: readonly Purchase[], days: number): number =>
  sumMoney(
    bills.map((bill) => {
      const processed = ({ processed: all }: Group): number =>
        all
          .filter(({ on }) => Math.abs(daysBetween(on, bill.on)) <= days)
          .reduce((sum, { count }) => sum + count, 0);
      return partOfBought(
        read,
        run,
        [bill],
        (_, of, paid) => ownPart(read, of, paid, processed) ?? shareByBirds(read, of, paid),
      );
    }),
  );
