/** Birds put on a scale: each weight, or their mean and how many they were. */
import { findingAt, findingMissing } from '../finding.ts';
import { defineKind } from './kind.ts';
import { baseOf, basesOrNull, countOf, fromEntry, groupOf } from './take.ts';

const meanOf = (numbers: readonly number[]): number =>
  numbers.reduce((sum, number) => sum + number, 0) / numbers.length;

/** Sample standard deviation (divisor n − 1); null for a single number. */
const spreadOf = (numbers: readonly number[]): number | null => {
  if (numbers.length < 2) return null;
  const mean = meanOf(numbers);
  const squares = numbers.reduce((sum, number) => sum + (number - mean) ** 2, 0);
  return Math.sqrt(squares / (numbers.length - 1));
};

export const weigh = defineKind({
  kind: 'weigh',
  concerns: 'group',
  fields: [
    { name: 'group', type: 'group', required: true },
    { name: 'weights', type: 'quantities', dimension: 'mass', min: 0 },
    { name: 'mean', type: 'quantity', dimension: 'mass', min: 0 },
    { name: 'count', type: 'count', min: 1 },
  ],
  example: '{"kind":"weigh","on":"2026-05-05","group":"whites","weights":["3.1 lb","3.4 lb","2.9 lb"]}',
  check: ({ fields }) => {
    const { weights, mean, count } = fields;
    if (!Array.isArray(weights)) {
      if (mean === undefined) return [findingMissing('weights', { or: ['mean', 'count'] })];
      return count === undefined ? [findingMissing('count')] : [];
    }
    // The weights say mean and count already; a second telling can only repeat or contradict them.
    if (mean !== undefined) return [findingAt('two-forms', 'mean', { other: 'weights' })];
    if (count === undefined || count === weights.length) return [];
    return [findingAt('out-of-range', 'count', { min: weights.length, max: weights.length })];
  },
  apply: (draft, entry, units) => {
    const weights = basesOrNull(entry, 'weights', units);
    groupOf(draft, entry)?.weighings.push({
      ...fromEntry(entry),
      mean: weights === null ? baseOf(entry, 'mean', units) : meanOf(weights),
      count: weights?.length ?? countOf(entry, 'count'),
      spread: weights === null ? null : spreadOf(weights),
    });
  },
});
