/** How much ground the pens have had and will want, and how much of it is left. */
import { addDays } from '../../day.ts';
import type { PenMove } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { livedOutOn } from '../past.ts';
import { settingNumber } from '../setting.ts';
import { fieldEach, fieldFigures, fieldOf, fieldWants } from './field.ts';
import { movesSinceOut, outSince } from './moves.ts';
import { penEach, pensOnGround } from './pens.ts';

/** How much of a pen's ground is fresh after moves; one shorter than the pen still covers some of the old. */
const freshShare = (moves: readonly PenMove[], length: number | undefined): number =>
  moves.reduce(
    (sum, { distance }) =>
      sum + (distance === null || length === undefined ? 1 : Math.min(1, distance / length)),
    0,
  );

const penLength = (read: Reader): number | undefined => {
  const length = read.maybe('pen-length');
  return length === undefined ? undefined : Number(length);
};

/** How many pens a move took along: those of its group, or all that were out that day. */
const pensMoved = (read: Reader, { group, on }: PenMove, pens: ReadonlyMap<string, number>): number => {
  if (group !== null) return pens.get(group) ?? 1;
  const out = read.state.groups.filter((each) => livedOutOn(each, on));
  const all = out.reduce((sum, each) => sum + (pens.get(each.name) ?? 1), 0);
  // Groups in one pen are moved together, and a move on record was of one pen at least.
  return Math.max(1, Math.min(all, settingNumber(read, 'pens') ?? all));
};

export const groundUseFacts = [
  defineFact({
    id: 'ground-used',
    unit: 'm2',
    per: 'flock',
    needs: ['pen-area'],
    each: ['pens-of-group'],
    wants: ['pen-length'],
    figures: ['pasture/ground-rest'],
    compute: (read) => {
      const since = addDays(read.on, -read.figure('pasture/ground-rest'));
      const pens = new Map(
        read.each('pens-of-group').map(({ group, value }) => [group.name, Number(value ?? 1)]),
      );
      const isLately = (each: { readonly on: string }): boolean => each.on > since && each.on <= read.on;
      const moves = read.state.moves.filter(isLately);
      const stands = read.state.groups.flatMap((group) =>
        group.whereabouts
          .filter((each) => each.place === 'pen' && !each.daysOnly && isLately(each))
          .map((each) => ({ ...each, pens: pens.get(group.name) ?? 1 })),
      );
      read.from(...stands, ...moves);
      // Each coming out lays the pen on one piece of ground, each move on one more.
      const places =
        stands.reduce((sum, each) => sum + each.pens, 0) +
        moves.reduce(
          (sum, each) => sum + pensMoved(read, each, pens) * freshShare([each], penLength(read)),
          0,
        );
      return places * read.number('pen-area');
    },
  }),
  defineFact({
    id: 'places-left',
    unit: 'move',
    per: 'flock',
    needs: ['ground-area', 'ground-used', 'pen-area'],
    wants: fieldWants,
    each: fieldEach,
    figures: fieldFigures,
    compute: (read) => {
      const ground = fieldOf(read);
      if (ground !== undefined) return ground.field.lanes.reduce((sum, lane) => sum + lane.room, 0);
      const left = read.number('ground-area') - read.number('ground-used');
      return Math.max(0, Math.floor(left / read.number('pen-area') + 1e-9));
    },
  }),
  defineFact({
    id: 'moves-left',
    unit: 'move',
    needs: ['places-left', 'pens-of-group'],
    compute: (read) => Math.floor(read.number('places-left') / read.number('pens-of-group')),
  }),
  defineFact({
    id: 'fresh-moves',
    unit: 'move',
    per: 'flock',
    wants: ['places-left'],
    compute: (read) => {
      const left = read.maybe('places-left');
      if (typeof left === 'number') return left;
      // Nobody measures a meadow before the birds may go out; where it is measured, it counts.
      read.assume('ground-is-fresh');
      return 1;
    },
  }),
  defineFact({
    id: 'moves-on-grass',
    unit: 'move',
    needs: ['place'],
    wants: ['moves-needed'],
    compute: (read) => {
      if (read.text('place') !== 'pen') return 0;
      const needed = read.maybe('moves-needed');
      return needed === undefined ? undefined : Number(needed);
    },
  }),
  defineFact({
    id: 'places-needed',
    unit: 'move',
    per: 'flock',
    each: [...penEach, 'moves-on-grass'],
    compute: (read) => {
      const { homes } = pensOnGround(read);
      const needed = read.each('moves-on-grass');
      if (needed.some(({ value }) => value === undefined)) return undefined;
      // Groups that share a pen are moved together.
      const byPen = new Map<string, number>();
      for (const { group, value } of needed)
        for (const pen of homes.get(group.name) ?? [])
          byPen.set(pen, Math.max(byPen.get(pen) ?? 0, Number(value)));
      return [...byPen.values()].reduce((sum, each) => sum + each, 0);
    },
  }),
  defineFact({
    id: 'ground-needed',
    unit: 'm2',
    needs: ['moves-needed', 'pen-area', 'pens-of-group'],
    compute: (read) => read.number('moves-needed') * read.number('pen-area') * read.number('pens-of-group'),
  }),
  defineFact({
    id: 'ground-had',
    unit: 'm2',
    needs: ['pen-area', 'pens-of-group'],
    wants: ['pen-length'],
    compute: (read) => {
      const standing = outSince(read) === undefined ? 0 : 1;
      const moved = freshShare(movesSinceOut(read), penLength(read));
      return (standing + moved) * read.number('pen-area') * read.number('pens-of-group');
    },
  }),
  defineFact({
    id: 'ground-free-on',
    unit: 'date',
    needs: ['last-move-on', 'strip-asked'],
    wants: ['strip-free-on'],
    figures: ['pasture/ground-rest'],
    compute: (read) => {
      const asked = read.number('strip-asked') > 0 ? read.maybe('strip-free-on') : undefined;
      return asked === undefined
        ? addDays(read.text('last-move-on'), read.figure('pasture/ground-rest'))
        : String(asked);
    },
  }),
];
