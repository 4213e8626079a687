/** Feed still there when batches are over: the next ones take it over at what was paid for it, and those before do not bear it. */
import type { Purchase } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { isFeed, massBought } from '../feed/bags.ts';
import { lessMoney, shareMoney, sumMoney } from '../sums/exact-money.ts';
import { countedGroups, purchasesOf, type Run, runFigures, runsOf, seasonFigures } from './season.ts';

/** Feed and what was paid for it. */
interface Feed {
  /** kg */
  readonly mass: number;
  readonly money: number;
}

const none: Feed = { mass: 0, money: 0 };

/** A hair of feed left by rounding is none. */
const least = 1e-6;

const massesOf = (read: Reader, purchases: readonly Purchase[]): number => {
  const bag = Number(read.maybe('bag-mass') ?? 0);
  return purchases.reduce((sum, each) => sum + (massBought(each, bag) ?? 0), 0);
};

/** Feed bought for one group of a run alone, kg. */
const ownFeed = (read: Reader, bought: readonly Purchase[], name: string): number =>
  massesOf(
    read,
    bought.filter(({ group }) => group === name),
  );

/** What a keeper counted between two runs, less what was bought for the later one by then, kg. */
const countedAfter = (read: Reader, { until = '' }: Run, next: Run | undefined): number | undefined => {
  const count = (read.state.settings['feed-in-stock'] ?? []).find(
    ({ on, value }) =>
      typeof value === 'number' && on >= until && on <= read.asked && (next === undefined || on < next.from),
  );
  if (count === undefined) return undefined;
  read.from(count);
  const meanwhile = read.state.purchases.filter(
    (each) => isFeed(each) && each.on > until && each.on <= count.on && each.line < count.line,
  );
  return Math.max(0, Number(count.value) - massesOf(read, meanwhile));
};

/** What the groups of a run ate of the feed that was there for all of them, kg; undefined where that is not known. */
const eatenOfCommon = (read: Reader, run: Run, bought: readonly Purchase[]): number | undefined => {
  const eaten = new Map(read.each('feed-eaten').map(({ group, value }) => [group.name, value]));
  const parts = run.groups.map(({ name }) => {
    const own = eaten.get(name);
    return own === undefined ? undefined : Math.max(0, Number(own) - ownFeed(read, bought, name));
  });
  return parts.some((part) => part === undefined)
    ? undefined
    : parts.reduce<number>((sum, part) => sum + Number(part), 0);
};

/**
 * What a run that is over leaves of the feed it found and bought, as counted, else by what was eaten. It is worth its part of what
 * was paid for all of it. Feed bought for one batch alone is borne by that one.
 */
const leftBy = (read: Reader, run: Run, found: Feed, next: Run | undefined): Feed => {
  if (run.until === undefined) return none;
  const bought = purchasesOf(read, run).filter(isFeed);
  const isFor = ({ group }: Purchase): boolean => run.groups.some(({ name }) => name === group);
  const common = bought.filter((each) => !isFor(each) && massesOf(read, [each]) > 0);
  const mass = found.mass + massesOf(read, common);
  const eaten = eatenOfCommon(read, run, bought);
  const left = countedAfter(read, run, next) ?? (eaten === undefined ? 0 : mass - eaten);
  if (left < least || mass < least) return none;
  const kept = Math.min(left, mass);
  const paid = sumMoney([found.money, ...common.map(({ price }) => price ?? 0)]);
  const [, money = 0] = shareMoney(paid, [mass - kept, kept]);
  return { mass: kept, money };
};

/** What the run of a group found in the bin when it began, and what it left there. */
const feedPassedOn = (read: Reader, name: string): { readonly found: Feed; readonly left: Feed } => {
  const runs = runsOf(read);
  let found = none;
  for (const [at, run] of runs.entries()) {
    const left = leftBy(read, run, found, runs[at + 1]);
    if (run.groups.some((group) => group.name === name)) return { found, left };
    found = left;
  }
  return { found: none, left: none };
};

const passedOn = { each: ['feed-eaten'], wants: ['bag-mass'], figures: runFigures };

/** What the last of the batches counted left in the bin. */
const leftByLast = (read: Reader): Feed => {
  const last = countedGroups(read).at(-1);
  return last === undefined ? none : feedPassedOn(read, last).left;
};

export const leftOverFacts = [
  defineFact({
    id: 'feed-taken-over',
    unit: 'money',
    ...passedOn,
    compute: (read) => feedPassedOn(read, read.group.name).found.money,
  }),
  defineFact({
    id: 'feed-passed-on',
    unit: 'kg',
    ...passedOn,
    compute: (read) => feedPassedOn(read, read.group.name).left.mass,
  }),
  defineFact({
    id: 'feed-passed-on-worth',
    unit: 'money',
    ...passedOn,
    compute: (read) => feedPassedOn(read, read.group.name).left.money,
  }),
  defineFact({
    id: 'all-feed-passed-on',
    unit: 'kg',
    per: 'flock',
    ...passedOn,
    figures: seasonFigures,
    compute: (read) => leftByLast(read).mass,
  }),
  defineFact({
    id: 'all-feed-passed-on-worth',
    unit: 'money',
    per: 'flock',
    ...passedOn,
    figures: seasonFigures,
    compute: (read) => leftByLast(read).money,
  }),
];

/** Facts that a fact wants which uses `feedCarried`. */
export const feedCarriedWants = ['feed-taken-over', 'feed-passed-on-worth'];

/** The money that a run bears for feed beside what was bought for it: what it found, less what it left. */
export const feedCarried = (read: Reader): number => {
  const [found, left] = feedCarriedWants.map((each) => Number(read.maybe(each) ?? 0));
  return lessMoney(found ?? 0, left ?? 0);
};
