/** Losses week by week of the birds' life beside what is usual, so that a bad week stands out. */
import { addDays, daysBetween } from '../day.ts';
import { defineFact, type Reader } from './define.ts';
import { exposureOn } from './usual-losses.ts';

const week = 7;

/** Week of life of a day: the hatch day and the six after it are week 1. */
const weekOf = (read: Reader, day: string): number =>
  Math.floor(Math.max(0, daysBetween(read.group.hatched, day)) / week) + 1;

/** Weeks of life that the group has been here, this one included. */
const weeksHere = (read: Reader): readonly number[] => {
  const first = weekOf(read, read.group.arrived);
  const last = Math.max(first, weekOf(read, read.on));
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
};

const lostIn = (read: Reader, number: number): number =>
  read.group.losses
    .filter((each) => weekOf(read, each.on) === number)
    .reduce((sum, each) => sum + each.count, 0);

/** Birds usually lost in a week of life, up to today at most. */
const usualIn = (read: Reader, number: number, birds: number, rate: number): number => {
  const begin = addDays(read.group.hatched, (number - 1) * week - 1);
  const end = addDays(read.group.hatched, number * week - 1);
  const until = daysBetween(read.on, end) < 0 ? end : read.on;
  const from = begin < read.group.arrived ? 0 : exposureOn(read, begin, birds);
  return birds * rate * Math.max(0, exposureOn(read, until, birds) - from);
};

export const lossWeekFacts = [
  defineFact({
    id: 'lost-by-week',
    unit: 'named',
    needs: ['lost'],
    compute: (read) => {
      read.from(...read.group.losses);
      return weeksHere(read)
        .map((number) => ({ number, lost: lostIn(read, number) }))
        .filter(({ lost }) => lost > 0)
        .map(({ number, lost }) => `week-${number}=${lost}`)
        .join(' ');
    },
  }),
  defineFact({
    id: 'worst-week',
    unit: null,
    needs: ['kind', 'arrived-alive', 'loss-rate', 'lost'],
    figures: ['losses/pattern'],
    compute: (read) => {
      const [birds, rate] = [read.number('arrived-alive'), read.number('loss-rate')];
      if (birds <= 0 || read.number('lost') === 0) return undefined;
      read.from(...read.group.losses);
      const over = weeksHere(read).map((number) => ({
        number,
        by: lostIn(read, number) - usualIn(read, number, birds, rate),
      }));
      return over.reduce((worst, each) => (each.by > worst.by ? each : worst)).number;
    },
  }),
  defineFact({
    id: 'lost-in-worst-week',
    unit: 'bird',
    needs: ['worst-week'],
    compute: (read) => lostIn(read, read.number('worst-week')),
  }),
  defineFact({
    id: 'usual-in-worst-week',
    unit: 'bird',
    needs: ['worst-week', 'kind', 'arrived-alive', 'loss-rate'],
    figures: ['losses/pattern'],
    compute: (read) =>
      usualIn(read, read.number('worst-week'), read.number('arrived-alive'), read.number('loss-rate')),
  }),
];
