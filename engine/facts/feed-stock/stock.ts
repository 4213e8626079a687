/** Feed in hand: what was there, what was bought, and what the groups have taken since. */
import { addDays, type Day } from '../../day.ts';
import type { FromEntry } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { isAfter, isFeed, massBought } from '../feed/bags.ts';
import { daysFromTo, latestOf } from '../feed/days.ts';
import { type Eater, eaterEach, eaterFigures, eatersOf } from '../feed/eater.ts';
import { givenOn } from '../feed/given.ts';

/** Where counting begins: the entry after which feed goes in and out, and what was there then. */
interface Start {
  readonly after: FromEntry;
  /** kg */
  readonly mass: number;
}

/** The keeper's last word on the stock, else an empty store before the first purchase; undefined without either. */
const startOf = (read: Reader): Start | undefined => {
  const told = read.state.settings['feed-in-stock']?.at(-1);
  if (told !== undefined && typeof told.value === 'number') {
    read.from(told);
    return { after: told, mass: told.value };
  }
  const [first] = read.state.purchases.filter(isFeed).sort((a, b) => (isAfter(a, b) ? 1 : -1));
  return first === undefined ? undefined : { after: { on: first.on, line: first.line - 1 }, mass: 0 };
};

interface Taken {
  readonly mass: number;
  /** Days for which the expected intake stood in for a record. */
  readonly assumed: number;
}

/**
 * What a group has taken since a day: as recorded, and as expected on the whole days between that have no record. Feed
 * given beyond a day's need lies in the feeder, and nothing is taken to be added until it is eaten.
 */
export const takenSince = (
  read: Reader,
  eater: Eater,
  eaters: readonly (Eater | undefined)[],
  start: FromEntry,
): Taken => {
  const given = givenOn(read, eaters, (feeding) => isAfter(feeding, start));
  const isWhole = (day: Day): boolean => day > start.on && day < read.asked;
  let [mass, inFeeder, assumed] = [0, 0, 0];
  for (const day of daysFromTo(start.on, read.asked)) {
    const need = eater.all(day);
    const record = given(eater, day);
    if (record !== undefined) read.from(...record.entries);
    const taken = record?.mass ?? (isWhole(day) ? Math.max(0, need - inFeeder) : 0);
    if (record === undefined && taken > 0) assumed += 1;
    mass += taken;
    if (day > start.on) inFeeder = Math.max(0, inFeeder + taken - need);
  }
  return { mass, assumed };
};

/** What is on record as given to a group of which no more is known; feed given to all is parted evenly where that holds of every group. */
const recordedSince = (read: Reader, eaters: readonly (Eater | undefined)[], start: FromEntry): number => {
  const part = eaters.every((eater) => eater === undefined) ? 1 / eaters.length : 0;
  const given = read.state.feedings.filter(
    (each) => isAfter(each, start) && (each.group === null || each.group === read.group.name),
  );
  read.from(...given);
  return given.reduce((sum, each) => sum + each.mass * (each.group === null ? part : 1), 0);
};

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
    wants: ['loss-rate'],
    figures: eaterFigures,
    compute: (read) => {
      const start = startOf(read);
      const eaters = eatersOf(read, eaterEach);
      const own = eaters.find((eater) => eater?.group.name === read.group.name);
      if (start === undefined) return undefined;
      if (own === undefined) {
        read.assume('feed-of-unknown-kind');
        return recordedSince(read, eaters, start.after);
      }
      const { mass, assumed } = takenSince(read, own, eaters, start.after);
      if (assumed > 0) {
        read.assume('days-without-feed-record', {
          days: { value: assumed, unit: 'day' },
          from: { value: addDays(latestOf(start.after.on, read.group.arrived), 1), unit: 'date' },
        });
      }
      return mass;
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
      const bought = read.state.purchases.filter((each) => isFeed(each) && isAfter(each, start.after));
      read.from(...bought);
      return bought.reduce((sum, each) => sum + (massBought(each, read.number('bag-mass')) ?? 0), 0);
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
