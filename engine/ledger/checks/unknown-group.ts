/** An entry about a group that never arrived. */
import { findingAt } from '../finding.ts';
import { textOrNull } from '../kinds/take.ts';
import { nearestOf } from '../nearest.ts';
import { recordOn } from '../target.ts';
import { touchesOf } from '../touches.ts';
import { arrivalsOf } from './arrivals.ts';
import { type Check, problemOf, type Scene } from './check.ts';

// A broken arrival is a problem of its own; that its group is not there is no fault of the entries that name it.
const namesInBrokenArrivals = (scene: Scene): readonly string[] =>
  scene.problems
    .map(({ at }) => recordOn(scene.ledger, at.line))
    .flatMap((record) =>
      record?.kind === 'arrive' && typeof record.group === 'string' ? [record.group] : [],
    );

export const unknownGroup: Check = {
  name: 'unknown-group',
  find: (scene) => {
    const names = [...arrivalsOf(scene).keys()];
    const known = new Set([...names, ...namesInBrokenArrivals(scene)]);
    return scene.standing.flatMap((standing) => {
      const group = textOrNull(standing.entry, 'group');
      if (group === null || known.has(group)) return [];
      const suggestion = nearestOf(group, names);
      const data = { found: group, wants: names, ...(suggestion === null ? {} : { suggestion }) };
      // It belongs to the group that was meant; when that cannot be guessed, it may be any group.
      const touches = touchesOf(standing.entry.kind, suggestion ?? undefined);
      return [problemOf(scene, standing, findingAt('unknown-group', 'group', data), touches)];
    });
  },
};
