/** What two groups could pass to each other, and what threatens one of them where it is. */
import { addDays, daysBetween } from '../../day.ts';
import type { Group } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { idsIn } from '../named-list.ts';
import { ofGroup, type Pair, pairEach, pairOf } from './pair.ts';

const both = ({ lighter, heavier }: Pair): readonly Group[] => [lighter, heavier];

/** Birds of a group taken by hunters of late; the fact declares `pasture/hunters-remembered`. */
const takenLately = (read: Reader, group: Group): number => {
  const since = addDays(read.on, -read.figure('pasture/hunters-remembered'));
  const taken = group.losses.filter(
    (each) => each.on > since && each.on <= read.on && read.causeClass(each.cause) === 'hunter',
  );
  read.from(...taken);
  return taken.reduce((sum, each) => sum + each.count, 0);
};

export const riskFacts = [
  defineFact({
    id: 'mix-sick-signs',
    unit: 'sign',
    per: 'flock',
    needs: ['mix-lighter', 'signs-told'],
    each: pairEach,
    figures: ['mixing/well-for'],
    compute: (read) => {
      const pair = pairOf(read);
      if (pair === undefined) return undefined;
      const since = addDays(read.on, -read.figure('mixing/well-for'));
      const names = both(pair).map(({ name }) => name);
      const seen = read.state.signs.filter(
        (each) =>
          each.on > since &&
          each.on <= read.on &&
          (each.group === null || names.includes(each.group)) &&
          read.signClass(each.sign) === 'illness',
      );
      read.from(...seen);
      // What the question tells was seen on the day it is asked.
      const told = read.asked > since ? idsIn(read.text('signs-told')) : [];
      const ill = told.filter((sign) => read.signClass(sign) === 'illness');
      return new Set([...seen.map((each) => each.sign), ...ill]).size;
    },
  }),
  defineFact({
    id: 'mix-dying',
    unit: null,
    per: 'flock',
    needs: ['mix-lighter'],
    each: [...pairEach, 'looks-sick'],
    compute: (read) => {
      const pair = pairOf(read);
      if (pair === undefined) return undefined;
      // In the order in which they came, as what was taken for granted of them is read out.
      const inOrder = read.state.groups.filter((group) => group === pair.lighter || group === pair.heavier);
      const sick = inOrder.map((group) => ofGroup(read, 'looks-sick', group));
      return sick.includes('yes') ? 'yes' : 'no';
    },
  }),
  defineFact({
    id: 'arrival-gap',
    unit: 'day',
    per: 'flock',
    needs: ['mix-lighter'],
    each: pairEach,
    compute: (read) => {
      const pair = pairOf(read);
      return pair === undefined
        ? undefined
        : Math.abs(daysBetween(pair.lighter.arrived, pair.heavier.arrived));
    },
  }),
  defineFact({
    id: 'last-arrived-on',
    unit: 'date',
    per: 'flock',
    needs: ['mix-lighter'],
    each: pairEach,
    compute: (read) => {
      const pair = pairOf(read);
      if (pair === undefined) return undefined;
      const last = both(pair).reduce((a, b) => (a.arrived >= b.arrived ? a : b));
      read.from({ on: last.arrived, line: last.line });
      return last.arrived;
    },
  }),
  defineFact({
    id: 'mix-last-here',
    unit: 'day',
    per: 'flock',
    needs: ['last-arrived-on'],
    compute: (read) => daysBetween(read.text('last-arrived-on'), read.on),
  }),
  defineFact({
    id: 'quarantine-until',
    unit: 'date',
    per: 'flock',
    needs: ['last-arrived-on'],
    figures: ['mixing/quarantine'],
    compute: (read) => addDays(read.text('last-arrived-on'), read.figure('mixing/quarantine')),
  }),
  defineFact({
    id: 'mix-past-day',
    unit: null,
    per: 'flock',
    needs: ['mix-lighter'],
    each: [...pairEach, 'held-until', 'kept-back', 'alive'],
    compute: (read) => {
      const pair = pairOf(read);
      if (pair === undefined) return undefined;
      // Birds kept back to breed or to live on have no such day.
      const past = both(pair).find(
        (group) =>
          Number(ofGroup(read, 'kept-back', group)) < Number(ofGroup(read, 'alive', group)) &&
          String(ofGroup(read, 'held-until', group) ?? read.on) < read.on,
      );
      return past?.name ?? 'none';
    },
  }),
  defineFact({
    id: 'mix-hunted',
    unit: null,
    per: 'flock',
    needs: ['mix-lighter', 'causes-told'],
    each: [...pairEach, 'place'],
    figures: ['pasture/hunters-remembered'],
    compute: (read) => {
      const pair = pairOf(read);
      if (pair === undefined) return undefined;
      const isOut = (group: Group): boolean => ofGroup(read, 'place', group) === 'pen';
      // In one pen they can only be put together from two: a group in the brooder is safe where it is.
      if (!both(pair).every(isOut)) return 'none';
      const told = idsIn(read.text('causes-told')).some((cause) => read.causeClass(cause) === 'hunter');
      const hunted = both(pair).find((group) => takenLately(read, group) > 0);
      return hunted?.name ?? (told ? pair.lighter.name : 'none');
    },
  }),
];
