/** Birds taken from the freezer and eaten. */
import { defineKind } from './kind.ts';
import { baseOrNull, countOf, fromEntry } from './take.ts';

export const eat = defineKind({
  kind: 'eat',
  fields: [
    { name: 'count', type: 'count', required: true, min: 1 },
    { name: 'weight', type: 'quantity', dimension: 'mass', min: 0 },
  ],
  example: '{"kind":"eat","on":"2026-07-04","count":1,"weight":"4.6 lb"}',
  apply: (draft, entry, units) => {
    draft.eaten.push({
      ...fromEntry(entry),
      count: countOf(entry, 'count'),
      mass: baseOrNull(entry, 'weight', units),
    });
  },
});
