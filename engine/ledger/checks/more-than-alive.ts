/** More birds of a group lost, processed or kept than there are. */
import { findingAt } from '../finding.ts';
import { countOf, countOrNull, textOrNull } from '../kinds/take.ts';
import { arrivalsOf } from './arrivals.ts';
import { type Check, problemOf } from './check.ts';

const TAKING: ReadonlySet<string> = new Set(['loss', 'process']);

/**
 * Goes by line and not by day. Birds only ever become fewer, so both orders find the same groups; but in file order the
 * line to blame is the one that was told last, not an older one on which a late entry about an earlier day falls back.
 */
export const moreThanAlive: Check = {
  name: 'more-than-alive',
  find: (scene) => {
    const alive = new Map(
      [...arrivalsOf(scene)].map(([name, entry]) => [
        name,
        countOf(entry, 'count') - (countOrNull(entry, 'dead') ?? 0),
      ]),
    );
    return scene.standing.flatMap((standing) => {
      const { entry } = standing;
      const group = textOrNull(entry, 'group') ?? '';
      const left = alive.get(group);
      if (left === undefined || !(TAKING.has(entry.kind) || entry.kind === 'keep')) return [];
      const count = countOf(entry, 'count');
      if (count > left) {
        // It is left out of the sum, so that one slip does not put every later line in the wrong.
        return [
          problemOf(
            scene,
            standing,
            findingAt('more-than-alive', 'count', { found: count, max: left, group }),
          ),
        ];
      }
      if (TAKING.has(entry.kind)) alive.set(group, left - count);
      return [];
    });
  },
};
