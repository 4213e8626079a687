/** Room at feeders and drinkers: the edge that a group wants at its age, in troughs and drinkers, and what there is. */
import { defineFact } from './define.ts';
import { settingNumber } from './setting.ts';

/** Birds eat from both sides of a trough. */
const sides = 2;

export const troughFacts = [
  defineFact({
    id: 'trough-birds',
    unit: 'bird',
    needs: ['alive'],
    compute: (read) => Math.max(0, read.number('alive')),
  }),
  defineFact({
    id: 'feeder-edge',
    unit: 'm',
    needs: ['trough-birds', 'age'],
    figures: ['brooder/feeder-space'],
    compute: (read) => {
      const each = read.maybeFigure('brooder/feeder-space');
      return each === undefined ? undefined : read.number('trough-birds') * each;
    },
  }),
  defineFact({
    id: 'trough-length',
    unit: 'm',
    needs: ['feeder-edge'],
    compute: (read) => read.number('feeder-edge') / sides,
  }),
  defineFact({
    id: 'drinker-edge',
    unit: 'm',
    needs: ['trough-birds', 'age'],
    figures: ['brooder/drinker-space'],
    compute: (read) => {
      const each = read.maybeFigure('brooder/drinker-space');
      return each === undefined ? undefined : read.number('trough-birds') * each;
    },
  }),
  defineFact({
    id: 'drinkers-wanted',
    unit: 'drinker',
    needs: ['trough-birds'],
    figures: ['brooder/birds-per-drinker', 'water/least-drinkers'],
    compute: (read) => {
      const birds = read.number('trough-birds');
      return birds === 0
        ? 0
        : Math.max(
            read.figure('water/least-drinkers'),
            Math.ceil(birds / read.figure('brooder/birds-per-drinker')),
          );
    },
  }),
  defineFact({
    id: 'drinkers-wanted-in-all',
    unit: 'drinker',
    per: 'flock',
    each: ['drinkers-wanted'],
    compute: (read) => read.each('drinkers-wanted').reduce((sum, { value }) => sum + Number(value ?? 0), 0),
  }),
  defineFact({
    id: 'wanted-drinker-size',
    unit: 'l',
    needs: ['age'],
    figures: ['brooder/drinker-size'],
    compute: (read) => read.maybeFigure('brooder/drinker-size'),
  }),
  defineFact({
    id: 'nipples-wanted',
    unit: null,
    needs: ['trough-birds'],
    figures: ['brooder/birds-per-nipple'],
    compute: (read) => Math.ceil(read.number('trough-birds') / read.figure('brooder/birds-per-nipple')),
  }),
  defineFact({
    id: 'feeder-length',
    unit: 'm',
    per: 'flock',
    compute: (read) => settingNumber(read, 'feeder-length'),
  }),
  defineFact({
    id: 'feeders',
    unit: 'feeder',
    per: 'flock',
    compute: (read) => {
      const set = settingNumber(read, 'feeders');
      if (set === undefined) read.assume('one-feeder');
      return set ?? 1;
    },
  }),
  defineFact({
    id: 'feeder-edge-there',
    unit: 'm',
    needs: ['feeder-length', 'feeders', 'alive', 'birds-on-feed'],
    compute: (read) => {
      const all = read.number('birds-on-feed');
      // Where there are several groups, each is taken to have its part of the feeders by its birds.
      const share = all === 0 ? 1 : read.number('alive') / all;
      if (share < 1) read.assume('feeders-shared');
      return sides * read.number('feeder-length') * read.number('feeders') * share;
    },
  }),
  defineFact({
    id: 'feeder-edge-each',
    unit: 'm',
    needs: ['feeder-edge-there', 'trough-birds'],
    compute: (read) =>
      read.number('trough-birds') === 0
        ? undefined
        : read.number('feeder-edge-there') / read.number('trough-birds'),
  }),
  defineFact({
    id: 'feeders-short',
    unit: 'feeder',
    needs: ['feeder-edge', 'feeder-edge-there', 'feeder-length'],
    compute: (read) =>
      Math.max(
        0,
        Math.ceil(
          (read.number('feeder-edge') - read.number('feeder-edge-there')) /
            (sides * read.number('feeder-length')) -
            1e-9,
        ),
      ),
  }),
];
