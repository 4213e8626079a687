/** Birds that died, were taken or went missing. */
import { defineKind } from './kind.ts';
import { countOf, fromEntry, groupOf, textOrNull } from './take.ts';

export const loss = defineKind({
  kind: 'loss',
  concerns: 'group',
  fields: [
    { name: 'group', type: 'group', required: true },
    { name: 'count', type: 'count', required: true, min: 1 },
    { name: 'cause', type: 'text' },
  ],
  example: '{"kind":"loss","on":"2026-05-02","group":"whites","count":2,"cause":"hawk"}',
  apply: (draft, entry) => {
    groupOf(draft, entry)?.losses.push({
      ...fromEntry(entry),
      count: countOf(entry, 'count'),
      cause: textOrNull(entry, 'cause') ?? 'unknown',
    });
  },
});
