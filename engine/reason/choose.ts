/** Several rules → one verdict, by the declared outranking alone. */
import { belowOf, isVerdict } from '../rulebook/ranking.ts';
import type { Rule } from '../types.ts';
import type { RuleOutcome } from './outcomes.ts';

/** Rules from the highest-ranking down; rules without an order between them stay in the order of their ids. */
export const byRank = (rules: readonly Rule[]): readonly Rule[] => {
  const byId = new Map(rules.map((rule) => [rule.id, rule]));
  const sorted = [...rules].sort((a, b) => (a.id < b.id ? -1 : 1));
  const below = new Map(sorted.map((rule) => [rule, belowOf(rule, byId)]));
  const placed: Rule[] = [];
  const seen = new Set<string>();
  const visit = (rule: Rule): void => {
    if (seen.has(rule.id)) return;
    seen.add(rule.id);
    for (const above of sorted) if (below.get(above)?.has(rule.id) === true) visit(above);
    placed.push(rule);
  };
  for (const rule of sorted) visit(rule);
  return placed;
};

export interface Choice {
  /** The highest-ranking rule that holds; null when none does. */
  readonly winner: RuleOutcome | null;
  /** Unknown rules above it: each could still overrule it. With no winner, the unknown ones that could have spoken. */
  readonly open: readonly RuleOutcome[];
}

/** Picks the verdict from outcomes in rank order. */
export const choose = (ranked: readonly RuleOutcome[]): Choice => {
  const verdicts = ranked.filter(({ rule }) => isVerdict(rule.gives));
  const at = verdicts.findIndex(({ outcome }) => outcome === 'held');
  const above = at === -1 ? verdicts : verdicts.slice(0, at);
  return { winner: verdicts[at] ?? null, open: above.filter(({ outcome }) => outcome === 'unknown') };
};
