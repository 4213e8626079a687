/** An undo or a correction that does not find its line: it counts for nothing, so what it meant still stands. */
import { findingAt } from '../finding.ts';
import { findTargets, isRevision } from '../target.ts';
import { type Check, problemOf } from './check.ts';

export const undoTarget: Check = {
  name: 'undo-target',
  find: (scene) => {
    const targetOf = findTargets(scene.ledger);
    return scene.believed.filter(isRevision).flatMap((entry) => {
      const target = targetOf(entry);
      if (!('mismatch' in target)) return [];
      const path = target.mismatch === 'another-line' || target.mismatch === 'several' ? 'print' : 'line';
      const data = { cause: target.mismatch, found: String(entry.fields[path]) };
      return [problemOf(scene, { entry, corrections: [] }, findingAt('undo-target', path, data))];
    });
  },
};
