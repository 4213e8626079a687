/** A pen moved to fresh ground. */
import { defineKind } from './kind.ts';
import { baseOrNull, fromEntry, textOrNull } from './take.ts';

export const move = defineKind({
  kind: 'move',
  fields: [
    { name: 'group', type: 'group' },
    { name: 'distance', type: 'quantity', dimension: 'length', min: 0 },
    { name: 'strip', type: 'text' },
  ],
  example: '{"kind":"move","on":"2026-05-08","group":"whites","distance":"12 ft"}',
  apply: (draft, entry, units) => {
    draft.moves.push({
      ...fromEntry(entry),
      group: textOrNull(entry, 'group'),
      distance: baseOrNull(entry, 'distance', units),
      strip: textOrNull(entry, 'strip'),
    });
  },
});
