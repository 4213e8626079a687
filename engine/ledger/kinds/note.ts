/** Words that the keeper wants to find again; nothing is worked out from them. */
import { defineKind } from './kind.ts';
import { fromEntry, textOf } from './take.ts';

export const note = defineKind({
  kind: 'note',
  fields: [{ name: 'words', type: 'text', required: true }],
  example: '{"kind":"note","on":"2026-05-02","words":"gate hinge needs oil"}',
  apply: (draft, entry) => {
    draft.notes.push({ ...fromEntry(entry), words: textOf(entry, 'words') });
  },
});
