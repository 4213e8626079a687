/** When the stock was last counted, and what the groups have taken and was bought since. */
import { addDays, type Day } from '../../day.ts';
import type { FromEntry, Purchase } from '../../types.ts';
import type { Reader } from '../define.ts';
import { isAfter, isFeed } from '../feed/bags.ts';
import { daysFromTo } from '../feed/days.ts';
import { type Eater, eaterEach, eatersOf } from '../feed/eater.ts';
import { givenOn } from '../feed/given.ts';

/** Where counting begins: the entry after which feed goes in and out, and what was there then. */
export interface Start {
  readonly after: FromEntry;
  /** kg */
  readonly mass: number;
}

/** The keeper's last word on the stock, else an empty store before the first purchase; undefined without either. */
export const startOf = (read: Reader): Start | undefined => {
  const told = read.state.settings['feed-in-stock']?.at(-1);
  if (told !== undefined && typeof told.value === 'number') {
    read.from(told);
    return { after: told, mass: told.value };
  }
  const [first] = read.state.purchases.filter(isFeed).sort((a, b) => (isAfter(a, b) ? 1 : -1));
  if (first !== undefined) read.from(first);
  return first === undefined ? undefined : { after: { on: first.on, line: first.line - 1 }, mass: 0 };
};

/** Feed taken on a day. */
interface TakenOn {
  readonly on: Day;
  /** kg */
  readonly mass: number;
  /** Whether the expected intake stood in for a record. */
  readonly assumed: boolean;
}

export const massOf = (taken: readonly { readonly mass: number }[]): number =>
  taken.reduce((sum, { mass }) => sum + mass, 0);

/**
 * What a group has taken since a day: as recorded, and as expected on the whole days between that have no record. Feed
 * given beyond a day's need lies in the feeder, and nothing is taken to be added until it is eaten.
 */
export const takenSince = (
  read: Reader,
  eater: Eater,
  eaters: readonly (Eater | undefined)[],
  start: FromEntry,
): readonly TakenOn[] => {
  const given = givenOn(read, eaters, (feeding) => isAfter(feeding, start));
  const isWhole = (day: Day): boolean => day > start.on && day < read.asked;
  let inFeeder = 0;
  return daysFromTo(start.on, read.asked).map((day) => {
    const need = eater.all(day);
    const record = given(eater, day);
    if (record !== undefined) read.from(...record.entries);
    const mass = record?.mass ?? (isWhole(day) ? Math.max(0, need - inFeeder) : 0);
    if (day > start.on) inFeeder = Math.max(0, inFeeder + mass - need);
    return { on: day, mass, assumed: record === undefined && mass > 0 };
  });
};

/** Says for how many days since one day the expected intake stood in for a record. */
export const assumeUnrecorded = (read: Reader, since: Day, taken: readonly TakenOn[]): void => {
  const days = taken.filter(({ assumed }) => assumed).length;
  if (days === 0) return;
  read.assume('days-without-feed-record', {
    days: { value: days, unit: 'day' },
    from: { value: addDays(since, 1), unit: 'date' },
  });
};

/** What is on record as given to a group of which no more is known; feed given to all is parted evenly where that holds of every group. */
const recordedSince = (
  read: Reader,
  eaters: readonly (Eater | undefined)[],
  start: FromEntry,
): readonly TakenOn[] => {
  const part = eaters.every((eater) => eater === undefined) ? 1 / eaters.length : 0;
  const given = read.state.feedings.filter(
    (each) => isAfter(each, start) && (each.group === null || each.group === read.group.name),
  );
  read.from(...given);
  return given.map(({ on, mass, group }) => ({
    on,
    mass: mass * (group === null ? part : 1),
    assumed: false,
  }));
};

/**
 * What the group asked about has taken since counting began, and whether its kind is one whose eating is known. The fact
 * declares `eaterEach`, `loss-rate` in wants and `eaterFigures`.
 */
export const ownTaken = (
  read: Reader,
  start: FromEntry,
): { readonly known: boolean; readonly taken: readonly TakenOn[] } => {
  const eaters = eatersOf(read, eaterEach);
  const own = eaters.find((eater) => eater?.group.name === read.group.name);
  return own === undefined
    ? { known: false, taken: recordedSince(read, eaters, start) }
    : { known: true, taken: takenSince(read, own, eaters, start) };
};

/** Feed bought since counting began. */
export const boughtSince = (read: Reader, start: FromEntry): readonly Purchase[] => {
  const bought = read.state.purchases.filter((each) => isFeed(each) && isAfter(each, start));
  read.from(...bought);
  return bought;
};
