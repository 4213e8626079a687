/** Birds weighed, from words: single weights, or a mean of so many. */
import type { NumberSpan } from '../spans.ts';
import { pickGroup } from './group.ts';
import { readWeights } from './mass.ts';
import { type Build, known, lacking, numbers, says, type Told, written } from './told.ts';

const countWords = new Set(['bird', 'chick', 'chicken', 'of', 'white', 'red', 'them']);

/** The number that says how many were weighed, if one does: next to birds, before a colon, or as many as follow it. */
const headCount = (told: Told): NumberSpan | null => {
  const all = numbers(told);
  const [first, ...rest] = all;
  if (first === undefined || !Number.isInteger(first.value)) return null;
  const next = told.line.tokens[first.to];
  const isNamed = told.line.spans.some(
    (span) => span.kind === 'group' && span.from >= first.to && span.from <= first.to + 2,
  );
  if (next?.word === ':' || isNamed || (next !== undefined && countWords.has(next.stem))) return first;
  return rest.length > 0 && rest.length === first.value ? first : null;
};

const totals = [
  'in all',
  'total',
  'altogether',
  'all together',
  'together',
  'all told',
  'combined',
  'in sum',
];

/** What all of them weigh together, shared out among them: the ledger holds a mean. */
const shareOut = (total: string, heads: number): { mean: string; assumed: readonly string[] } => {
  const [value = '', unit = ''] = total.split(' ');
  const mean = written(Math.round((Number(value) / heads) * 1000) / 1000, unit);
  return { mean, assumed: [`taking ${total} over ${heads} birds as ${mean} each`] };
};

export const buildWeigh: Build = (told) => {
  const picked = pickGroup(told, () => true);
  const head = headCount(told);
  const { weights, assumed } = readWeights(told, head === null ? [] : [head]);
  const [only, second] = weights;
  if (
    head !== null &&
    head.value > 1 &&
    only !== undefined &&
    second === undefined &&
    says(told, ...totals)
  ) {
    const shared = shareOut(only, head.value);
    const fields = { group: picked.group, mean: shared.mean, count: head.value };
    return {
      fields: known(fields),
      missing: lacking(fields, 'group'),
      assumed: [...picked.assumed, ...assumed, ...shared.assumed],
    };
  }
  const isMean =
    says(told, 'average', 'averaged', 'averaging', 'averages', 'mean', 'on average', 'apiece', 'each') &&
    weights.length === 1;
  const fields = {
    group: picked.group,
    weights: isMean || weights.length === 0 ? null : weights,
    mean: isMean ? (weights[0] ?? null) : null,
    count: isMean ? (head?.value ?? null) : null,
  };
  const nothing = weights.length === 0 ? ['weights'] : [];
  return {
    fields: known(fields),
    missing: [...lacking(fields, 'group'), ...nothing, ...(isMean && head === null ? ['count'] : [])],
    assumed: [...picked.assumed, ...assumed],
  };
};
