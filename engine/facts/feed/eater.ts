/** A group as an eater: what one of its birds, and all of them, eat on any day. */
import { type Day, daysBetween } from '../../day.ts';
import type { Group, Value } from '../../types.ts';
import type { Reader } from '../define.ts';
import { aliveOn, livedOutOn } from '../past.ts';
import { coldFigures, coldShare } from './cold.ts';
import { type IntakeLine, intakeFigures, intakeLine } from './intake.ts';
import { survivalFigures, survivalLine } from './survival.ts';

export interface Eater {
  readonly group: Group;
  /** Feed of one bird on a day by the table and its flock's growth, kg; 0 before it has hatched. */
  byTable(day: Day): number;
  /** The same with own feed records and cold counted. */
  perBird(day: Day): number;
  /** Birds alive on a day: on record for the past, expected for days to come. */
  birds(day: Day): number;
  /** Feed of the group on a day, kg. */
  all(day: Day): number;
}

/** Facts behind an eater: those it cannot do without, and those that count where they are known. */
export const eaterNeeds = ['kind', 'growth-line', 'sexes', 'alive', 'place'];
export const eaterWants = ['flock-ratio', 'feed-ratio', 'loss-rate'];
/** The same for every group, declared in `each` beside `loss-rate` in wants. */
export const eaterEach = [...eaterNeeds, 'flock-ratio', 'feed-ratio'];
export const eaterFigures = [...intakeFigures, ...coldFigures, ...survivalFigures, 'feed/with-growth'];

type Known = (fact: string) => Value | undefined;

/** What the tables say of a group: its feed by age, what its growth makes of that, and how many are left at any age. */
interface Lines {
  readonly eaten: IntakeLine;
  readonly withGrowth: number;
  readonly survive: ReturnType<typeof survivalLine>;
}

const eaterFrom = (read: Reader, group: Group, known: Known): Eater => {
  const ageOn = (day: Day): number => daysBetween(group.hatched, day);
  const growth = Number(known('flock-ratio') ?? 1);
  const records = Number(known('feed-ratio') ?? 1);
  const rate = known('loss-rate');
  const alive = Number(known('alive'));
  const draw = (): Lines => ({
    eaten: intakeLine(read, String(known('growth-line')), String(known('sexes')), ageOn(read.on)),
    withGrowth: growth === 1 ? 1 : growth ** read.figure('feed/with-growth'),
    survive: survivalLine(read, String(known('kind')), rate === undefined ? undefined : Number(rate)),
  });
  let drawn: Lines | undefined;
  const lines = (): Lines => {
    drawn ??= draw();
    return drawn;
  };
  // Of batches long gone there are ever more: theirs are drawn only where a day of their lives is asked about.
  if (alive > 0) lines();
  const isOut = (day: Day): boolean => (day < read.asked ? livedOutOn(group, day) : known('place') === 'pen');
  const byTable = (day: Day): number => {
    if (ageOn(day) < 0) return 0;
    const { eaten, withGrowth } = lines();
    return (eaten(ageOn(day) + 1) - eaten(ageOn(day))) * withGrowth;
  };
  const perBird = (day: Day): number =>
    byTable(day) * records * (1 + (isOut(day) ? coldShare(read, day) : 0));
  const birds = (day: Day): number =>
    day < read.asked
      ? aliveOn(group, day)
      : alive === 0
        ? 0
        : alive * lines().survive(ageOn(read.asked), ageOn(day));
  // Walks over the past ask for the same day again and again, once for each group that shares the feed.
  const byDay = new Map<Day, number>();
  const all = (day: Day): number => {
    const known = byDay.get(day);
    if (known !== undefined) return known;
    const eating = birds(day);
    const found = eating === 0 ? 0 : perBird(day) * eating;
    byDay.set(day, found);
    return found;
  };
  return { group, byTable, perBird, birds, all };
};

/** The eater of the group asked about. The fact declares `eaterNeeds`, `eaterWants` and `eaterFigures`. */
export const eaterOf = (read: Reader): Eater =>
  eaterFrom(read, read.group, (fact) => {
    if (eaterWants.includes(fact)) return read.maybe(fact);
    return fact === 'alive' ? read.number(fact) : read.text(fact);
  });

/**
 * Every group as an eater, also those that are gone, undefined where the growth of its kind is not known.
 * @param each the facts of `eaterEach`, or fewer: one left out counts as unknown
 */
export const eatersOf = (read: Reader, each: readonly string[]): readonly (Eater | undefined)[] => {
  const columns = new Map(each.map((fact) => [fact, read.each(fact)]));
  const lossRate = read.maybe('loss-rate');
  return read.each('alive').map(({ group }, index) => {
    const known: Known = (fact) => (fact === 'loss-rate' ? lossRate : columns.get(fact)?.[index]?.value);
    return known('growth-line') === undefined ? undefined : eaterFrom(read, group, known);
  });
};
