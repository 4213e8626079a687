/** What a batch has eaten from its arrival: by its feed records, else by what was bought for it, else as expected. */
import { addDays } from '../../day.ts';
import type { Feeding } from '../../types.ts';
import type { Reader } from '../define.ts';
import { isFeed, massBought } from '../feed/bags.ts';
import { daysFromTo, earliestOf } from '../feed/days.ts';
import type { Eater } from '../feed/eater.ts';
import { givenOn } from '../feed/given.ts';
import { ownRun, purchasesOf, runFigures } from '../money/season.ts';
import { goneOn } from '../past.ts';
import { byGroup } from '../views.ts';
import { assumeUnrecorded, massOf, type TakenOn, takenFigures, takenSince } from './taken.ts';

type Eaters = readonly (Eater | undefined)[];

/** What a fact declares to use `eatenByBatch`, beside `bag-mass` in wants and what its eaters need. */
export const batchFigures = [...takenFigures, ...runFigures, 'feed/records-doubt-high'];

/** What a group was expected to eat on each day from its arrival to yesterday, or to the day by which it was gone. */
const expected = (read: Reader, { group, all }: Eater): readonly TakenOn[] => {
  const yesterday = addDays(read.asked, -1);
  const days = daysFromTo(group.arrived, earliestOf(yesterday, goneOn(group) ?? yesterday));
  return days.map((on) => ({ on, mass: all(on), assumed: true }));
};

/** Feed on record for a group, its part of what was given to all groups included. */
const recorded = (read: Reader, eaters: Eaters, own: Eater): readonly TakenOn[] => {
  const given = givenOn(read, eaters);
  const days = new Set(
    read
      .see(
        byGroup<Feeding>,
        read.state.feedings,
      )(own.group.name)
      .map(({ on }) => on),
  );
  const here = [...days].filter((on) => on >= own.group.arrived && on <= read.asked).sort();
  return here.flatMap((on) => {
    const found = given(own, on);
    if (found !== undefined) read.from(...found.entries);
    return found === undefined ? [] : [{ on, mass: found.mass, assumed: false }];
  });
};

/** A group's part of the feed bought for a run of batches that is over; undefined where purchases cannot be all of it. */
const boughtFor = (read: Reader, eaters: Eaters, own: Eater): readonly TakenOn[] | undefined => {
  const run = ownRun(read);
  if (run.until === undefined) return undefined;
  const bag = read.maybe('bag-mass');
  const masses = purchasesOf(read, run)
    .filter(isFeed)
    .map((each) => massBought(each, Number(bag)));
  const bought = masses.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  const names = run.groups.map(({ name }) => name);
  const wanted = eaters
    .filter((eater) => eater !== undefined)
    .filter((eater) => names.includes(eater.group.name))
    .reduce((sum, eater) => sum + massOf(expected(read, eater)), 0);
  const isLikely =
    bought >= wanted * read.figure('feed/records-whole') &&
    bought <= wanted * read.figure('feed/records-doubt-high');
  if (!isLikely || wanted === 0) return undefined;
  read.assume('feed-as-bought', { bought: { value: bought, unit: 'kg' } });
  return expected(read, own).map(({ on, mass }) => ({ on, mass: (mass * bought) / wanted, assumed: false }));
};

/** Day by day; says what was taken for granted. The fact declares `batchFigures`. */
export const eatenByBatch = (read: Reader, own: Eater, eaters: Eaters): readonly TakenOn[] => {
  const onRecord = recorded(read, eaters, own);
  const least = massOf(expected(read, own)) * read.figure('feed/records-whole');
  if (onRecord.length > 0 && massOf(onRecord) >= least) return onRecord;
  const bought = onRecord.length > 0 ? undefined : boughtFor(read, eaters, own);
  if (bought !== undefined) return bought;
  const taken = takenSince(read, own, eaters, { on: own.group.arrived, line: 0 });
  assumeUnrecorded(read, own.group.arrived, taken);
  return taken;
};
