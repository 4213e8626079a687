/** Something bought: feed, chicks, bedding, gear. */
import { defineKind } from './kind.ts';
import { baseOrNull, countOrNull, fromEntry, textOf, textOrNull } from './take.ts';

export const buy = defineKind({
  kind: 'buy',
  fields: [
    { name: 'what', type: 'text', required: true },
    { name: 'ration', type: 'text' },
    { name: 'bags', type: 'quantity', dimension: 'bags', min: 0 },
    { name: 'amount', type: 'quantity', dimension: 'mass', min: 0 },
    { name: 'count', type: 'count', min: 1 },
    { name: 'price', type: 'money' },
    { name: 'group', type: 'group' },
  ],
  example:
    '{"kind":"buy","on":"2026-04-30","what":"feed","ration":"grower","bags":"6 bags","amount":"300 lb","price":"117.00"}',
  apply: (draft, entry, units) => {
    draft.purchases.push({
      ...fromEntry(entry),
      what: textOf(entry, 'what'),
      ration: textOrNull(entry, 'ration'),
      mass: baseOrNull(entry, 'amount', units),
      bags: baseOrNull(entry, 'bags', units),
      count: countOrNull(entry, 'count'),
      price: textOrNull(entry, 'price'),
      group: textOrNull(entry, 'group'),
    });
  },
});
