/** Birds kept back from processing. */
import { defineKind } from './kind.ts';
import { countOf, fromEntry, groupOf, textOrNull } from './take.ts';

export const keep = defineKind({
  kind: 'keep',
  concerns: 'group',
  fields: [
    { name: 'group', type: 'group', required: true },
    { name: 'count', type: 'count', required: true, min: 1 },
    { name: 'until', type: 'day' },
    { name: 'why', type: 'text' },
  ],
  example: '{"kind":"keep","on":"2026-06-01","group":"reds","count":3,"until":"2026-08-01","why":"to breed"}',
  apply: (draft, entry) => {
    groupOf(draft, entry)?.kept.push({
      ...fromEntry(entry),
      count: countOf(entry, 'count'),
      until: textOrNull(entry, 'until'),
    });
  },
});
