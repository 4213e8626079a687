/** Three values: held, failed or unknown. The rule engine knows only two, so the folding is ours (Kleene's strong logic). */
import { operatorNamed } from '../operators.ts';
import type { Leaf, Outcome, Rule, Value } from '../types.ts';
import type { Compared, ComparedCondition, RunResult } from './run.ts';

/** A leaf with its outcome and both sides in base units. */
export interface LeafOutcome {
  readonly leaf: Leaf;
  readonly outcome: Outcome;
  readonly left: Value | undefined;
  readonly right: Value | readonly string[] | undefined;
}

/** A rule with its outcome, the leaves that decided it, and all its leaves. */
export interface RuleOutcome {
  readonly rule: Rule;
  readonly outcome: Outcome;
  readonly deciding: readonly LeafOutcome[];
  readonly leaves: readonly LeafOutcome[];
}

interface Folded {
  readonly outcome: Outcome;
  readonly deciding: readonly LeafOutcome[];
  readonly leaves: readonly LeafOutcome[];
}

const turned: Readonly<Record<Outcome, Outcome>> = { held: 'failed', failed: 'held', unknown: 'unknown' };

const ofLeaf = ({ leaf, left, right, result }: Compared): Folded => {
  const asksOnlyIfKnown = operatorNamed(leaf.operator)?.takes === 'nothing';
  const unknown = left === undefined || (right === undefined && !asksOnlyIfKnown);
  const outcome: Outcome = unknown ? 'unknown' : result ? 'held' : 'failed';
  const one = { leaf, outcome, left, right };
  return { outcome, deciding: [one], leaves: [one] };
};

/** A list is settled by its decisive outcome; failing that it is unknown if any part is, else the opposite. */
const join = (parts: readonly Folded[], decisive: Outcome): Folded => {
  const leaves = parts.flatMap((part) => part.leaves);
  for (const outcome of [decisive, 'unknown'] as const) {
    const having = parts.filter((part) => part.outcome === outcome);
    if (having.length > 0) return { outcome, deciding: having.flatMap((part) => part.deciding), leaves };
  }
  return { outcome: turned[decisive], deciding: parts.flatMap((part) => part.deciding), leaves };
};

const fold = (condition: ComparedCondition): Folded => {
  if ('all' in condition) return join(condition.all.map(fold), 'failed');
  if ('any' in condition) return join(condition.any.map(fold), 'held');
  if ('not' in condition) {
    const inner = fold(condition.not);
    return { ...inner, outcome: turned[inner.outcome] };
  }
  return ofLeaf(condition);
};

/** The outcome of one rule; a leaf on an unknown fact is unknown, also inside `not`. */
export const outcomeOf = ({ rule, conditions }: RunResult): RuleOutcome => ({ rule, ...fold(conditions) });
