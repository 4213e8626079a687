/** The room one batch needs together with all others at its fullest day: brooder, pens, ground and freezer. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { liveWanted } from '../planning/kind-ready.ts';
import { wholeUp } from '../sums/whole.ts';
import { otherStays, type Stay, stayFigures, stayNeeds, stayOf } from './stay.ts';

const daysInWeek = 7;
const hoursInDay = 24;

/** Days on which the sum can be largest: when this batch or another begins or is about to leave. */
const edgesIn = (first: Day, last: Day, others: readonly (readonly [Day, Day])[]): readonly Day[] => [
  addDays(last, -1),
  ...others.flatMap(([from, to]) => [from, addDays(to, -1)]).filter((day) => day >= first && day < last),
];

const peakOf = (days: readonly Day[], of: (day: Day) => number): number => Math.max(0, ...days.map(of));

const sumOf = (stays: readonly Stay[], of: (stay: Stay) => number): number =>
  stays.reduce((sum, each) => sum + of(each), 0);

const brooderFloor = (read: Reader, stay: Stay, day: Day): number => {
  if (day < stay.arrives || day >= stay.out) return 0;
  const week = daysBetween(stay.group.hatched, day) / daysInWeek;
  return stay.birds * (read.maybeFigure('brooder/floor-space', [week]) ?? 0);
};

/** Pen floor of a batch by its full weight, since it stays in the same pens to the end. */
const penFloor = (read: Reader, stay: Stay): number =>
  stay.birds *
  Math.max(
    read.figure('pasture/pen-space-least'),
    liveWanted(read, stay.kind) / read.figure('room/heaviest'),
  );

/** Birds of a batch left for processing: those the order is made for. */
const birdsAtEnd = (read: Reader, stay: Stay): number =>
  stay.group.arrived > read.asked ? read.number('batch-birds') : stay.birds;

/** Ground a batch goes over between two days, a fresh pen's length a day. */
const groundOf = (read: Reader, stay: Stay, since: Day, until: Day): number => {
  const pens = Math.max(1, wholeUp(penFloor(read, stay) / read.number('pen-area')));
  const from = stay.out > since ? stay.out : since;
  const to = stay.process < until ? stay.process : until;
  return pens * read.number('pen-area') * Math.max(0, daysBetween(from, to));
};

export const batchRoomFacts = [
  defineFact({
    id: 'batch-brooder',
    unit: 'm2',
    needs: stayNeeds,
    figures: [...stayFigures, 'brooder/floor-space'],
    compute: (read) => {
      const own = stayOf(read, read.group);
      const others = otherStays(read);
      const days = edgesIn(
        own.arrives,
        own.out,
        others.map((each) => [each.arrives, each.out]),
      );
      return peakOf(days, (day) => sumOf([own, ...others], (each) => brooderFloor(read, each, day)));
    },
  }),
  defineFact({
    id: 'pens-area',
    unit: 'm2',
    per: 'flock',
    needs: ['pen-area'],
    wants: ['pens'],
    compute: (read) => read.number('pen-area') * Number(read.maybe('pens') ?? 1),
  }),
  defineFact({
    id: 'batch-pens',
    unit: 'm2',
    needs: stayNeeds,
    figures: [...stayFigures, 'pasture/pen-space-least', 'room/heaviest'],
    compute: (read) => {
      const own = stayOf(read, read.group);
      const others = otherStays(read);
      const days = edgesIn(
        own.out,
        own.process,
        others.map((each) => [each.out, each.process]),
      );
      const on = (day: Day) => (each: Stay) =>
        day >= each.out && day < each.process ? penFloor(read, each) : 0;
      return peakOf(days, (day) => sumOf([own, ...others], on(day)));
    },
  }),
  defineFact({
    id: 'batch-ground',
    unit: 'm2',
    needs: [...stayNeeds, 'pen-area'],
    figures: [...stayFigures, 'pasture/pen-space-least', 'room/heaviest', 'pasture/ground-rest'],
    compute: (read) => {
      const rest = read.figure('pasture/ground-rest');
      const own = stayOf(read, read.group);
      const since = addDays(own.process, -rest);
      return sumOf([own, ...otherStays(read)], (each) => groundOf(read, each, since, own.process));
    },
  }),
  defineFact({
    id: 'freezer-for-birds',
    unit: 'l',
    per: 'flock',
    needs: ['freezer-free', 'freezer-left', 'wanted-carcass'],
    figures: ['freezer/whole-birds'],
    compute: (read) =>
      read.number('freezer-free') +
      (read.number('freezer-left') * read.number('wanted-carcass')) / read.figure('freezer/whole-birds'),
  }),
  defineFact({
    id: 'batch-freezer-birds',
    unit: 'bird',
    needs: [...stayNeeds, 'freezer-left', 'birds-a-week', 'batch-birds'],
    figures: stayFigures,
    compute: (read) => {
      const own = stayOf(read, read.group);
      // Eating goes on from the first bird in the freezer; an empty freezer does not go below nothing.
      const coming = [own, ...otherStays(read)]
        .filter((each) => birdsAtEnd(read, each) > 0 && each.process <= own.process)
        .sort((one, other) => (one.process < other.process ? -1 : 1));
      let left = read.number('freezer-left');
      let on = read.asked;
      for (const each of coming) {
        const eaten = (read.number('birds-a-week') * daysBetween(on, each.process)) / daysInWeek;
        left = Math.max(0, left - eaten) + birdsAtEnd(read, each);
        on = each.process;
      }
      return wholeUp(left);
    },
  }),
  defineFact({
    id: 'batch-freezer',
    unit: 'l',
    needs: ['batch-freezer-birds', 'wanted-carcass'],
    figures: ['freezer/whole-birds'],
    compute: (read) =>
      (read.number('batch-freezer-birds') * read.number('wanted-carcass')) /
      read.figure('freezer/whole-birds'),
  }),
  defineFact({
    id: 'batch-freeze-days',
    unit: 'day',
    needs: ['batch-birds', 'wanted-carcass', 'freeze-a-day'],
    compute: (read) =>
      read.number('freeze-a-day') > 0
        ? wholeUp((read.number('batch-birds') * read.number('wanted-carcass')) / read.number('freeze-a-day'))
        : undefined,
  }),
  defineFact({
    id: 'batch-work',
    unit: 'day',
    needs: ['batch-birds', 'birds-per-hour'],
    compute: (read) =>
      read.number('birds-per-hour') > 0
        ? read.number('batch-birds') / read.number('birds-per-hour') / hoursInDay
        : undefined,
  }),
];
