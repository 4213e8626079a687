/** Something seen on the birds or around them. */
import { defineKind } from './kind.ts';
import { countOrNull, fromEntry, textOf, textOrNull } from './take.ts';

export const sign = defineKind({
  kind: 'sign',
  fields: [
    { name: 'sign', type: 'text', required: true },
    { name: 'group', type: 'group' },
    { name: 'count', type: 'count', min: 1 },
    { name: 'words', type: 'text' },
  ],
  example:
    '{"kind":"sign","on":"2026-04-11","sign":"piled","group":"whites","words":"all in a heap under the lamp"}',
  apply: (draft, entry) => {
    draft.signs.push({
      ...fromEntry(entry),
      sign: textOf(entry, 'sign'),
      count: countOrNull(entry, 'count'),
      group: textOrNull(entry, 'group'),
      words: textOrNull(entry, 'words') ?? '',
    });
  },
});
