/** Outcomes → numbered reasons, the deciding one first. It reads recorded results only, so it cannot tell another story. */

import type { Choice } from '../reason/choose.ts';
import type { LeafOutcome, RuleOutcome } from '../reason/outcomes.ts';
import type { FigureUse, Missing, Reason, Shown } from '../types.ts';
import { type Filling, sentence } from './sentence.ts';

export interface Told {
  readonly choice: Choice;
  readonly outcomes: readonly RuleOutcome[];
  readonly group: string | null;
  readonly filling: Filling;
  /** The figure a leaf was held against, as used. */
  figure(id: string): FigureUse | undefined;
  unitOf(fact: string): string | null;
}

/** Whether a rule settles the question, rather than adding to its answer. */
export const isVerdict = ({ rule }: RuleOutcome): boolean =>
  !['caution', 'step', 'remark'].includes(rule.gives);

/** One comparison of a rule as a reason. */
export const reasonOf = (
  told: Told,
  { rule }: RuleOutcome,
  { leaf, outcome, left, right }: LeafOutcome,
): Omit<Reason, 'n'> => {
  const shown = (id: string, value: LeafOutcome['left']): Shown & { readonly id: string } => ({
    id,
    value: value ?? null,
    unit: told.unitOf(id),
  });
  return {
    rule: rule.id,
    group: told.group,
    outcome,
    says: sentence(leaf.because, told.filling),
    fact: shown(leaf.fact, left),
    operator: leaf.operator,
    figure: leaf.figure === null ? null : (told.figure(leaf.figure) ?? null),
    other:
      leaf.other === null
        ? null
        : shown(leaf.other, right === undefined || typeof right === 'object' ? undefined : right),
    source: rule.source,
    why: rule.whyRight,
  };
};

/**
 * The reasons for a verdict: what decided it, then the rest of that rule, then what else would have decided the same way
 * or could still overrule it. With no verdict: what is not known, rule by rule.
 */
export const reasonsFor = (told: Told): readonly Omit<Reason, 'n'>[] => {
  const { winner, open } = told.choice;
  // An outranked amount is another sum, and a rule that says otherwise is no reason for this verdict.
  const others = told.outcomes.filter(
    (each) =>
      each !== winner &&
      each.outcome === 'held' &&
      each.rule.gives === winner?.rule.gives &&
      each.rule.gives !== 'amount' &&
      isVerdict(each),
  );
  const ordered =
    winner === null
      ? open.map((each) => ({ of: each, leaves: each.deciding }))
      : [
          { of: winner, leaves: winner.deciding },
          { of: winner, leaves: winner.leaves.filter((leaf) => leaf.outcome === 'held') },
          ...others.map((each) => ({ of: each, leaves: each.deciding })),
          // Where nothing can be said, what is lacking is asked for; listing it as reasons too would say it twice.
          ...open
            .filter(({ rule }) => winner.rule.gives !== 'cannot-say' && rule.gives !== winner.rule.gives)
            .map((each) => ({ of: each, leaves: each.deciding })),
        ];
  const seen = new Set<string>();
  const reasons: Omit<Reason, 'n'>[] = [];
  for (const { of, leaves } of ordered) {
    for (const leaf of leaves) {
      const reason = reasonOf(told, of, leaf);
      // The same comparison may stand in several rules: it is one reason.
      const key = JSON.stringify([leaf.leaf.fact, leaf.leaf.figure, leaf.leaf.other, leaf.leaf.value]);
      if (seen.has(key)) continue;
      seen.add(key);
      reasons.push(reason);
    }
  }
  return reasons;
};

/** Whether an unknown rule above the winner would give something else; two amounts are never taken for the same. */
const couldChange = ({ rule }: RuleOutcome, winner: RuleOutcome): boolean =>
  rule.gives !== winner.rule.gives || rule.gives === 'amount';

/** What is not known and could still change the answer, each once. */
export const missingFor = (
  told: Told,
  missingOf: (fact: string) => readonly Missing[],
): readonly Missing[] => {
  const { winner, open } = told.choice;
  const matters = winner === null ? open : open.filter((each) => couldChange(each, winner));
  const found: Missing[] = [];
  for (const { deciding } of matters) {
    for (const { leaf } of deciding) {
      for (const id of leaf.other === null ? [leaf.fact] : [leaf.fact, leaf.other]) {
        for (const each of missingOf(id)) {
          if (!found.some((have) => have.fact === each.fact && have.group === each.group)) found.push(each);
        }
      }
    }
  }
  return found;
};
