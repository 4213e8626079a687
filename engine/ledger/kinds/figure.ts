/** The keeper's own value for a figure of the rulebook, with the reason for it. */
import { defineKind } from './kind.ts';
import { fromEntry, quantityOf, textOf } from './take.ts';

export const figure = defineKind({
  kind: 'figure',
  fields: [
    { name: 'figure', type: 'figure-id', required: true },
    { name: 'value', type: 'figure-value', required: true },
    { name: 'reason', type: 'text', required: true },
  ],
  example:
    '{"kind":"figure","on":"2026-04-20","figure":"feed/bag","value":"40 lb","reason":"the mill packs smaller bags"}',
  apply: (draft, entry) => {
    draft.ownFigures.push({
      ...fromEntry(entry),
      figure: textOf(entry, 'figure'),
      quantity: quantityOf(entry, 'value'),
      reason: textOf(entry, 'reason'),
    });
  },
});
