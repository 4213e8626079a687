/** When the stock was last counted, and what the groups have taken and was bought since. */
import { addDays, type Day } from '../../day.ts';
import type { FromEntry, Purchase } from '../../types.ts';
import type { Reader } from '../define.ts';
import { isAfter, isFeed } from '../feed/bags.ts';
import { daysFromTo } from '../feed/days.ts';
import type { Eater } from '../feed/eater.ts';
import { type Given, givenOn } from '../feed/given.ts';

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
export interface TakenOn {
  readonly on: Day;
  /** kg */
  readonly mass: number;
  /** Whether the expected intake stood in for a record. */
  readonly assumed: boolean;
}

export const massOf = (taken: readonly { readonly mass: number }[]): number =>
  taken.reduce((sum, { mass }) => sum + mass, 0);

/** What `takenSince` and those that use it declare. */
export const takenFigures = ['feed/records-whole'];

/**
 * The day up to which few records of much feed, put down now and then, are all that was taken; undefined where there are
 * records on most days or they make up too little.
 */
const wholeUntil = (
  read: Reader,
  days: readonly { readonly on: Day; readonly need: number; readonly record: Given | undefined }[],
): Day | undefined => {
  const last = days.findLastIndex(({ record }) => record !== undefined);
  const until = days.slice(0, last + 1);
  const having = until.filter(({ record }) => record !== undefined);
  const needed = until.reduce((sum, { need }) => sum + need, 0);
  const onRecord = having.reduce((sum, { record }) => sum + (record?.mass ?? 0), 0);
  const isSeldom = having.length * 2 <= until.length;
  return isSeldom && onRecord >= needed * read.figure('feed/records-whole') ? until.at(-1)?.on : undefined;
};

/**
 * What a group has taken since a day: as recorded, and as expected on the whole days between that have no record, unless
 * records now and then make up about all of it. Feed given beyond what they need lies in the feeder, and nothing is taken
 * to be added until it is eaten. The fact declares `takenFigures`.
 */
export const takenSince = (
  read: Reader,
  eater: Eater,
  eaters: readonly (Eater | undefined)[],
  start: FromEntry,
): readonly TakenOn[] => {
  const given = givenOn(read, eaters, (feeding) => isAfter(feeding, start));
  const days = daysFromTo(start.on, read.asked).map((on) => {
    const record = given(eater, on);
    if (record !== undefined) read.from(...record.entries);
    return { on, need: eater.all(on), record };
  });
  const whole = wholeUntil(read, days);
  const isAssumed = (day: Day): boolean =>
    day > start.on && day < read.asked && (whole === undefined || day > whole);
  let inFeeder = 0;
  return days.map(({ on, need, record }) => {
    const mass = record?.mass ?? (isAssumed(on) ? Math.max(0, need - inFeeder) : 0);
    inFeeder = Math.max(0, inFeeder + mass - need);
    return { on, mass, assumed: record === undefined && mass > 0 };
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

/** Feed bought since counting began. */
export const boughtSince = (read: Reader, start: FromEntry): readonly Purchase[] => {
  const bought = read.state.purchases.filter((each) => isFeed(each) && isAfter(each, start));
  read.from(...bought);
  return bought;
};
