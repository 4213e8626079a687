/** Who outranks whom among the rules of a question. */
import type { Gives, Rule } from '../types.ts';

/** Whether it settles a question, rather than adding a caution, a step or a remark. */
export const isVerdict = (gives: Gives): boolean =>
  gives !== 'caution' && gives !== 'step' && gives !== 'remark';

/** Every rule that this one outranks, directly or by way of others. A circle ends where it began. */
export const belowOf = (rule: Rule, byId: ReadonlyMap<string, Rule>): ReadonlySet<string> => {
  const below = new Set<string>();
  const visit = (id: string): void => {
    for (const next of byId.get(id)?.outranks ?? []) {
      if (below.has(next)) continue;
      below.add(next);
      visit(next);
    }
  };
  visit(rule.id);
  return below;
};
