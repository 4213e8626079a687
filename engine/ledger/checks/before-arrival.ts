/** Something that happened to a group before it arrived. */
import { findingAt } from '../finding.ts';
import { textOrNull } from '../kinds/take.ts';
import { arrivalsOf } from './arrivals.ts';
import { type Check, problemOf } from './check.ts';

export const beforeArrival: Check = {
  name: 'before-arrival',
  find: (scene) => {
    const arrivals = arrivalsOf(scene);
    return scene.standing.flatMap((standing) => {
      const group = textOrNull(standing.entry, 'group');
      const arrival = group === null ? undefined : arrivals.get(group);
      if (group === null || arrival === undefined || standing.entry.on >= arrival.on) return [];
      // What a group will need is bought before it comes.
      if (standing.entry.kind === 'buy') return [];
      const data = { found: standing.entry.on, min: arrival.on, group, 'first-line': arrival.line };
      return [problemOf(scene, standing, findingAt('before-arrival', 'on', data))];
    });
  },
};
