/** Where two groups would live together: the room for both, and whether one of them could not stand it there yet. */
import type { Group } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { besides } from '../ground/pens.ts';
import { ofGroup, pairEach, pairOf } from './pair.ts';

const daysInWeek = 7;

/** The one of the two that is still in the brooder while the other lives out. */
const notOut = (read: Reader): Group | undefined => {
  const pair = pairOf(read);
  if (pair === undefined) return undefined;
  const inside = [pair.lighter, pair.heavier].filter((group) => ofGroup(read, 'place', group) === 'brooder');
  return inside.length === 1 ? inside[0] : undefined;
};

/** A fact of the one that is not out; unknown where both are, or both are not. */
const ofNotOut = (id: string, unit: string, fact: string) =>
  defineFact({
    id,
    unit,
    per: 'flock',
    needs: ['mix-not-out'],
    each: [...pairEach, 'place', fact],
    compute: (read) => {
      const group = notOut(read);
      return group === undefined ? undefined : ofGroup(read, fact, group);
    },
  });

export const roomFacts = [
  defineFact({
    id: 'mix-place',
    unit: null,
    per: 'flock',
    needs: ['mix-lighter'],
    each: [...pairEach, 'place'],
    compute: (read) => {
      const pair = pairOf(read);
      if (pair === undefined) return undefined;
      const isInside = (group: Group): boolean => ofGroup(read, 'place', group) === 'brooder';
      return isInside(pair.lighter) && isInside(pair.heavier) ? 'brooder' : 'pen';
    },
  }),
  defineFact({
    id: 'mix-together',
    unit: 'date',
    per: 'flock',
    needs: ['mix-lighter'],
    each: [...pairEach, 'pens-of-group'],
    compute: (read) => {
      const pair = pairOf(read);
      if (pair === undefined) return undefined;
      return besides(read, pair.lighter.name).find(({ name }) => name === pair.heavier.name)?.since;
    },
  }),
  defineFact({
    id: 'mix-shares',
    unit: null,
    per: 'flock',
    needs: ['mix-lighter'],
    wants: ['mix-together'],
    compute: (read) => (read.maybe('mix-together') === undefined ? 'no' : 'yes'),
  }),
  defineFact({
    id: 'mix-not-out',
    unit: null,
    per: 'flock',
    needs: ['mix-lighter'],
    each: [...pairEach, 'place'],
    compute: (read) => notOut(read)?.name ?? 'none',
  }),
  ofNotOut('mix-not-out-age', 'day', 'age'),
  ofNotOut('mix-not-out-floor', 'C', 'night-floor'),
  defineFact({
    id: 'mix-birds',
    unit: 'bird',
    per: 'flock',
    needs: ['mix-lighter'],
    each: [...pairEach, 'alive'],
    compute: (read) => {
      const pair = pairOf(read);
      if (pair === undefined) return undefined;
      return [pair.lighter, pair.heavier].reduce(
        (sum, group) => sum + Number(ofGroup(read, 'alive', group)),
        0,
      );
    },
  }),
  defineFact({
    id: 'mix-floor',
    unit: 'm2',
    per: 'flock',
    needs: ['mix-place'],
    wants: ['brooder-floor', 'pen-area'],
    each: [...pairEach, 'pens-of-group'],
    compute: (read) => {
      const pair = pairOf(read);
      const isInside = read.text('mix-place') === 'brooder';
      const floor = read.maybe(isInside ? 'brooder-floor' : 'pen-area');
      if (pair === undefined || floor === undefined) return undefined;
      const pens = [pair.lighter, pair.heavier].map((group) =>
        Number(ofGroup(read, 'pens-of-group', group) ?? 1),
      );
      return Number(floor) * (isInside ? 1 : Math.max(...pens));
    },
  }),
  defineFact({
    id: 'mix-room',
    unit: 'm2',
    per: 'flock',
    needs: ['mix-floor', 'mix-birds'],
    compute: (read) => read.number('mix-floor') / read.number('mix-birds'),
  }),
  defineFact({
    id: 'mix-room-needed',
    unit: 'm2',
    per: 'flock',
    needs: ['mix-place'],
    each: [...pairEach, 'age'],
    figures: ['pasture/pen-space-least', 'brooder/floor-space'],
    compute: (read) => {
      const pair = pairOf(read);
      if (pair === undefined) return undefined;
      if (read.text('mix-place') === 'pen') return read.figure('pasture/pen-space-least');
      const ages = [pair.lighter, pair.heavier].map((group) => Number(ofGroup(read, 'age', group)));
      return read.maybeFigure('brooder/floor-space', [Math.max(...ages) / daysInWeek]);
    },
  }),
];
