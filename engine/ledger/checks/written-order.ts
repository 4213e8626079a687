/** A line written earlier than one that stands above it: a clock was set back, or two files were joined. */
import { findingAt } from '../finding.ts';
import { type Check, problemOf } from './check.ts';

export const writtenOrder: Check = {
  name: 'written-order',
  find: (scene) => {
    let latest = { instant: Number.NEGATIVE_INFINITY, written: '', line: 0 };
    return scene.believed.flatMap((entry) => {
      if (entry.written === null) return [];
      const instant = Date.parse(entry.written);
      if (instant >= latest.instant) {
        latest = { instant, written: entry.written, line: entry.line };
        return [];
      }
      const data = { found: entry.written, min: latest.written, 'first-line': latest.line };
      return [problemOf(scene, { entry, corrections: [] }, findingAt('written-order', 'written', data), [])];
    });
  },
};
