/** A group put out into its pen, or brought back to the brooder. */
import { defineKind } from './kind.ts';
import { choiceOf, fromEntry, groupOf, hasFlag } from './take.ts';

const PLACES = ['pen', 'brooder'] as const;

export const out = defineKind({
  kind: 'out',
  concerns: 'group',
  fields: [
    { name: 'group', type: 'group', required: true },
    { name: 'to', type: 'choice', choices: PLACES },
    { name: 'days-only', type: 'flag' },
    { name: 'pen', type: 'text' },
  ],
  example: '{"kind":"out","on":"2026-05-04","group":"whites","to":"pen","days-only":true}',
  apply: (draft, entry) => {
    groupOf(draft, entry)?.whereabouts.push({
      ...fromEntry(entry),
      place: choiceOf(entry, 'to', PLACES),
      daysOnly: hasFlag(entry, 'days-only'),
    });
  },
});
