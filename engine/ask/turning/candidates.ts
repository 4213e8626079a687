/** Which changes of facts could turn a verdict: each comparison's turning values, and for a derived fact what it stands on. */
import { turningValues } from '../../explain/tipping-point.ts';
import type { LeafOutcome } from '../../reason/outcomes.ts';
import { leavesOf } from '../../rulebook/conditions.ts';
import type { Change, Rule, Step, Value } from '../../types.ts';
import type { Evaluation } from '../evaluate.ts';

/** What is known about facts while changes of them are looked for. */
export interface Grounds {
  /** The rules that can decide. */
  readonly rules: readonly Rule[];
  /** The smallest change of a fact worth speaking of, in base units. */
  step(fact: string, unit: string | null): number;
  /** True for what neither the keeper nor the weather can change. */
  isFixed(fact: string): boolean;
  /** Changes of what a derived fact stands on that bring it to a value. */
  levers(evaluation: Evaluation, fact: string, to: Value): readonly Change[];
}

/** How large a change is beside what is there, so that changes of different facts can be set in order. */
export const sizeOf = ({ from, to }: Pick<Change, 'from' | 'to'>): number =>
  typeof from === 'number' && typeof to === 'number'
    ? Math.abs(to - from) / Math.max(Math.abs(from), Math.abs(to), 1e-9)
    : 1;

/** Whether a fact stands on records, settings or figures, so that somebody could change it; else it is a sum of other facts. */
export const isDirect = (step: Step): boolean => step.entries.length > 0 || step.facts.length === 0;

const choicesIn = (rules: readonly Rule[], fact: string): readonly Value[] => {
  const named = rules
    .flatMap((rule) => leavesOf(rule.when))
    .filter(({ leaf }) => leaf.fact === fact)
    .flatMap(({ leaf }) =>
      Array.isArray(leaf.value) ? [...leaf.value] : leaf.value === null ? [] : [leaf.value as Value],
    );
  return [...new Set(named)];
};

const changesOf = (grounds: Grounds, evaluation: Evaluation, leaf: LeafOutcome): readonly Change[] => {
  const { fact } = leaf.leaf;
  if (grounds.isFixed(fact)) return [];
  const step = evaluation.workings.step(fact, evaluation.group);
  const values = turningValues(leaf, grounds.step(fact, step.unit), choicesIn(grounds.rules, fact));
  return values
    .filter((to) => leaf.left !== undefined && leaf.left !== to)
    .flatMap((to): readonly Change[] =>
      isDirect(step)
        ? [{ fact, group: step.group, from: leaf.left ?? null, to, unit: step.unit }]
        : grounds.levers(evaluation, fact, to),
    );
};

/** Every change that turns one of these comparisons, smallest first, each once. */
export const candidatesIn = (
  grounds: Grounds,
  evaluation: Evaluation,
  leaves: readonly LeafOutcome[],
): readonly Change[] => {
  const byChange = new Map(
    leaves
      .flatMap((leaf) => changesOf(grounds, evaluation, leaf))
      .map((change) => [JSON.stringify([change.fact, change.group, change.to]), change]),
  );
  return [...byChange.values()].sort((one, other) => sizeOf(one) - sizeOf(other));
};
