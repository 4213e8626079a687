/** What the feed records say a group was given on a day, and over how many days they say anything. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import type { Feeding } from '../../types.ts';
import type { Reader } from '../define.ts';
import { byDay } from '../views.ts';
import type { Eater } from './eater.ts';

/** Feed on record for a day, kg, with the entries behind it; undefined when nothing is. */
export interface Given {
  readonly mass: number;
  readonly entries: readonly Feeding[];
}

/**
 * Feed given to a group on a day: its own, and its part of what was given to all by what each group was expected to eat;
 * evenly where nothing was expected of any.
 * @param isCounted which feedings count at all
 */
export const givenOn = (
  read: Reader,
  eaters: readonly (Eater | undefined)[],
  isCounted: (feeding: Feeding) => boolean = () => true,
): ((eater: Eater, day: Day) => Given | undefined) => {
  const onDay = read.see(byDay<Feeding>, read.state.feedings);
  const known = eaters.filter((each) => each !== undefined);
  return (eater, day) => {
    const entries = (onDay.get(day) ?? []).filter(
      (each) => (each.group === null || each.group === eater.group.name) && isCounted(each),
    );
    if (entries.length === 0) return undefined;
    const expected = known.reduce((sum, each) => sum + each.all(day), 0);
    // Feed given on a day that ends without birds, as the day of processing does, was still taken from the bags.
    const part = expected === 0 ? 1 / known.length : eater.all(day) / expected;
    const mass = entries.reduce((sum, each) => sum + each.mass * (each.group === null ? part : 1), 0);
    return { mass, entries };
  };
};

/** Feed records of a stretch of days beside what was expected on the days that have one. */
export interface Tally {
  /** Days with a record. */
  readonly days: number;
  /** Days from the first record to yesterday. */
  readonly span: number;
  /** kg */
  readonly recorded: number;
  /** kg */
  readonly expected: number;
}

/** Tallies an eater's records from so many days back to yesterday; today may still get more. */
export const tallyOf = (
  read: Reader,
  eater: Eater,
  given: (eater: Eater, day: Day) => Given | undefined,
  back: number,
): Tally => {
  const days = Array.from({ length: back }, (_, index) => addDays(read.asked, index - back)).filter(
    (day) => day >= eater.group.arrived,
  );
  const having = days.flatMap((day) => {
    const found = given(eater, day);
    // A day on which nothing was expected of them says nothing about how well they eat.
    return found === undefined || eater.all(day) === 0 ? [] : [{ day, ...found }];
  });
  for (const { entries } of having) read.from(...entries);
  const first = having[0]?.day;
  return {
    days: having.length,
    span: first === undefined ? 0 : daysBetween(first, read.asked),
    recorded: having.reduce((sum, each) => sum + each.mass, 0),
    expected: having.reduce((sum, each) => sum + eater.all(each.day), 0),
  };
};
