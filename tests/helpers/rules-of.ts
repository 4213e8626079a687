/** Rules and conditions made up for tests of the reasoning alone; they know nothing of birds. */
import type { Condition, Leaf, Rule } from '../../engine/types.ts';

/** A comparison with whatever side is given. */
export const leaf = (fact: string, operator: string, side: Partial<Leaf> = {}): Leaf => ({
  fact,
  operator,
  figure: null,
  other: null,
  value: null,
  because: `${fact} ${operator}`,
  ...side,
});

/** A rule of the question `ask`. */
export const ruleOf = (name: string, when: Condition, more: Partial<Rule> = {}): Rule => ({
  id: `ask/${name}`,
  question: 'ask',
  gives: 'no',
  when,
  says: name,
  whyRight: name,
  source: 'own-judgement',
  outranks: [],
  chore: null,
  daily: false,
  cases: [],
  ...more,
});
