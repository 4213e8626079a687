/** Birds slaughtered and dressed. */
import { findingAt } from '../finding.ts';
import { defineKind } from './kind.ts';
import { baseOrNull, basesOrNull, countOf, fromEntry, groupOf } from './take.ts';

export const process = defineKind({
  kind: 'process',
  concerns: 'group',
  fields: [
    { name: 'group', type: 'group', required: true },
    { name: 'count', type: 'count', required: true, min: 1 },
    { name: 'dressed', type: 'quantity', dimension: 'mass', min: 0 },
    { name: 'weights', type: 'quantities', dimension: 'mass', min: 0 },
  ],
  example: '{"kind":"process","on":"2026-06-02","group":"whites","count":12,"dressed":"54 lb"}',
  check: (entry) => {
    const { weights, dressed } = entry.fields;
    if (!Array.isArray(weights)) return [];
    if (dressed !== undefined) return [findingAt('two-forms', 'dressed', { other: 'weights' })];
    // A sum over some of the birds would pass for the weight of all of them.
    const count = countOf(entry, 'count');
    if (weights.length === count) return [];
    return [findingAt('out-of-range', 'weights', { found: weights.length, min: count, max: count })];
  },
  apply: (draft, entry, units) => {
    const weights = basesOrNull(entry, 'weights', units);
    groupOf(draft, entry)?.processed.push({
      ...fromEntry(entry),
      count: countOf(entry, 'count'),
      dressed: weights?.reduce((sum, weight) => sum + weight, 0) ?? baseOrNull(entry, 'dressed', units),
    });
  },
});
