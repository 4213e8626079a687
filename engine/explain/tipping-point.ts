/** Where a comparison would just turn over: the value of its fact nearest to what it is now that changes its outcome. */
import type { LeafOutcome } from '../reason/outcomes.ts';
import type { Value } from '../types.ts';

/** What makes each ordering true, as a side of the right-hand value: on it, or one step below or above. */
const trueAt: Readonly<Record<string, -1 | 0 | 1>> = {
  'less-than': -1,
  'at-most': 0,
  'more-than': 1,
  'at-least': 0,
};
const falseAt: Readonly<Record<string, -1 | 0 | 1>> = {
  'less-than': 0,
  'at-most': 1,
  'more-than': 0,
  'at-least': -1,
};

/**
 * Values of the leaf's fact that would turn the leaf, nearest first; empty where it cannot be said (unknown sides, days).
 * @param step the smallest change of the fact worth speaking of, in base units
 * @param choices the other values that a choice may take, as the rules themselves name them
 */
export const turningValues = (
  { leaf, outcome, left, right }: LeafOutcome,
  step: number,
  choices: readonly Value[],
): readonly Value[] => {
  // A leaf that only asks whether a fact is known is not turned by any other value of it.
  if (left === undefined || outcome === 'unknown' || leaf.operator === 'known') return [];
  const side = (outcome === 'held' ? falseAt : trueAt)[leaf.operator];
  if (side !== undefined)
    return typeof left === 'number' && typeof right === 'number' ? [right + side * step] : [];
  if (typeof left === 'boolean') return [!left];
  if (typeof left === 'number') {
    const isSame = (outcome === 'held') === (leaf.operator === 'is');
    return typeof right === 'number' ? [isSame ? right + step : right] : [];
  }
  return choices.filter((each) => each !== left);
};
