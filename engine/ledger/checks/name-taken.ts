/** A group that arrives under a name which another group has had; groups are known by their names, so the second is left out. */

import { inDayOrder } from '../day-order.ts';
import { findingAt } from '../finding.ts';
import { freeName } from '../free-name.ts';
import { textOf } from '../kinds/take.ts';
import { type Check, problemOf } from './check.ts';

export const nameTaken: Check = {
  name: 'name-taken',
  find: (scene) => {
    const arrivals = inDayOrder(scene.standing.filter(({ entry }) => entry.kind === 'arrive'));
    const groups = arrivals.map(({ entry }) => ({ name: textOf(entry, 'group') }));
    const lines = new Map<string, number>();
    return arrivals.flatMap((standing) => {
      const name = textOf(standing.entry, 'group');
      const first = lines.get(name);
      if (first === undefined) {
        lines.set(name, standing.entry.line);
        return [];
      }
      const data = { found: name, 'first-line': first, suggestion: freeName(groups, name) };
      return [problemOf(scene, standing, findingAt('name-taken', 'group', data))];
    });
  },
};
