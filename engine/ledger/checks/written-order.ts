/** A line written earlier than one that stands above it: a clock was set back, or two files were joined. */
import { findingAt } from '../finding.ts';
import { type Check, problemOf } from './check.ts';

export const writtenOrder: Check = {
  name: 'written-order',
  // Said once, at the first such line: all that was joined on behind it would say the same.
  find: (scene) => {
    let latest = { instant: Number.NEGATIVE_INFINITY, written: '', line: 0 };
    const copies = new Set(scene.copies.map(({ entry }) => entry.line));
    for (const entry of scene.believed) {
      if (entry.written === null || copies.has(entry.line)) continue;
      const instant = Date.parse(entry.written);
      if (instant < latest.instant) {
        const data = { found: entry.written, min: latest.written, 'first-line': latest.line };
        return [
          problemOf(scene, { entry, corrections: [] }, findingAt('written-order', 'written', data), []),
        ];
      }
      latest = { instant, written: entry.written, line: entry.line };
    }
    return [];
  },
};
