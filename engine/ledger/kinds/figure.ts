/** The keeper's own value for a figure of the rulebook or for one cell of its table, for all birds or one group, with the reason for it. */
import { defineKind } from './kind.ts';
import { fromEntry, quantityOf, textOf, textOrNull } from './take.ts';

export const figure = defineKind({
  kind: 'figure',
  fields: [
    { name: 'figure', type: 'figure-id', required: true },
    { name: 'at', type: 'figure-cell' },
    { name: 'value', type: 'figure-value', required: true },
    { name: 'group', type: 'group' },
    { name: 'reason', type: 'text' },
  ],
  example:
    '{"kind":"figure","on":"2026-04-20","figure":"pasture/ground-rest","value":"60 day","reason":"our grass is slow"}',
  apply: (draft, entry) => {
    draft.ownFigures.push({
      ...fromEntry(entry),
      figure: textOf(entry, 'figure'),
      at: textOrNull(entry, 'at') ?? undefined,
      quantity: quantityOf(entry, 'value'),
      group: textOrNull(entry, 'group') ?? undefined,
      reason: textOrNull(entry, 'reason'),
    });
  },
});
