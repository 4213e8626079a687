/** How many birds can be counted on after the usual losses, and how many of them are free to promise. */
import { defineFact, type Reader } from './define.ts';
import { chanceOfAtLeast, type Lot, surelyLeft } from './sums/survivors.ts';

/** Birds alive that may be promised, with the losses still to come. */
const lotsAlive = (read: Reader): readonly Lot[] => {
  const losses = read.each('loss-to-come');
  return read.each('birds-for-table').map(({ value }, index) => ({
    count: Number(value ?? 0),
    loss: Number(losses[index]?.value ?? 0),
  }));
};

export const freeBirdFacts = [
  defineFact({
    id: 'birds-alive-for-table',
    unit: 'bird',
    per: 'flock',
    each: ['birds-for-table'],
    compute: (read) => read.each('birds-for-table').reduce((sum, { value }) => sum + Number(value ?? 0), 0),
  }),
  defineFact({
    id: 'birds-to-count-on',
    unit: 'bird',
    per: 'flock',
    needs: ['freezer-left', 'certainty'],
    each: ['birds-for-table', 'loss-to-come'],
    compute: (read) => read.number('freezer-left') + surelyLeft(lotsAlive(read), read.number('certainty')),
  }),
  defineFact({
    id: 'free-birds',
    unit: 'bird',
    per: 'flock',
    needs: ['birds-to-count-on', 'promised'],
    compute: (read) => Math.max(0, read.number('birds-to-count-on') - read.number('promised')),
  }),
  defineFact({
    id: 'short-of-promises',
    unit: 'bird',
    per: 'flock',
    needs: ['birds-to-count-on', 'promised'],
    compute: (read) => Math.max(0, read.number('promised') - read.number('birds-to-count-on')),
  }),
  defineFact({
    id: 'promises-chance',
    unit: 'ratio',
    per: 'flock',
    needs: ['freezer-left', 'promised'],
    each: ['birds-for-table', 'loss-to-come'],
    compute: (read) =>
      chanceOfAtLeast(lotsAlive(read), read.number('promised') - read.number('freezer-left')),
  }),
];
