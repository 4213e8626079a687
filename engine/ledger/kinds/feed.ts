/** Feed given, to one group or to all. */
import { defineKind } from './kind.ts';
import { baseOf, fromEntry, textOrNull } from './take.ts';

export const feed = defineKind({
  kind: 'feed',
  fields: [
    { name: 'group', type: 'group' },
    { name: 'amount', type: 'quantity', dimension: 'mass', required: true, min: 0 },
    { name: 'ration', type: 'text' },
  ],
  example: '{"kind":"feed","on":"2026-05-02","group":"whites","amount":"25 lb","ration":"grower"}',
  apply: (draft, entry, units) => {
    draft.feedings.push({
      ...fromEntry(entry),
      mass: baseOf(entry, 'amount', units),
      group: textOrNull(entry, 'group'),
    });
  },
});
