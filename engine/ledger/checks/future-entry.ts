/** Something told as having happened on a day that had not come yet. */
import { findingAt } from '../finding.ts';
import { kindNamed } from '../kinds/index.ts';
import { type Check, problemOf } from './check.ts';

export const futureEntry: Check = {
  name: 'future-entry',
  find: (scene) =>
    scene.standing.flatMap((standing) => {
      const { entry } = standing;
      const told = entry.written?.slice(0, 10) ?? scene.measure.today;
      if (entry.on <= told || kindNamed(entry.kind)?.ahead === true) return [];
      return [problemOf(scene, standing, findingAt('future-entry', 'on', { found: entry.on, max: told }))];
    }),
};
