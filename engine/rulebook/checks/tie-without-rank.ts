/** Two rules of a question that can hold at once with different verdicts need a declared order; and no rule may outrank itself. */
import type { Problem } from '../../problem.ts';
import type { Condition, Leaf, Rule } from '../../types.ts';
import { isLeaf } from '../conditions.ts';
import { belowOf, isVerdict } from '../ranking.ts';
import type { RulebookCheck } from './index.ts';

const opposites: Readonly<Record<string, string>> = {
  'less-than': 'at-least',
  'at-least': 'less-than',
  'more-than': 'at-most',
  'at-most': 'more-than',
  is: 'is-not',
  'is-not': 'is',
  'one-of': 'none-of',
  'none-of': 'one-of',
};

/** The leaves that must all hold for the condition to hold. */
const mustHold = (condition: Condition): Leaf[] => {
  if (isLeaf(condition)) return [condition];
  if ('all' in condition) return condition.all.flatMap(mustHold);
  return [];
};

const sameSide = (a: Leaf, b: Leaf): boolean =>
  a.fact === b.fact &&
  a.figure === b.figure &&
  a.other === b.other &&
  JSON.stringify(a.value) === JSON.stringify(b.value);

const listOf = (leaf: Leaf): readonly unknown[] =>
  Array.isArray(leaf.value) ? leaf.value : leaf.operator === 'is' && leaf.value !== null ? [leaf.value] : [];

/** Two leaves that cannot both hold: opposite comparisons with one side, or choices without a common member. */
const exclude = (a: Leaf, b: Leaf): boolean => {
  if (sameSide(a, b)) return opposites[a.operator] === b.operator;
  const chooses = (leaf: Leaf): boolean => leaf.operator === 'is' || leaf.operator === 'one-of';
  if (a.fact !== b.fact || !chooses(a) || !chooses(b)) return false;
  const left = listOf(a);
  const right = listOf(b);
  return left.length > 0 && right.length > 0 && !left.some((each) => right.includes(each));
};

const cannotBoth = (a: Rule, b: Rule): boolean =>
  mustHold(a.when).some((left) => mustHold(b.when).some((right) => exclude(left, right)));

export const tieWithoutRank: RulebookCheck = ({ book, documents }) => {
  const rules = Object.values(book.rules);
  const byId = new Map(rules.map((rule) => [rule.id, rule]));
  const below = new Map(rules.map((rule) => [rule.id, belowOf(rule, byId)]));
  const ordered = (a: Rule, b: Rule): boolean =>
    below.get(a.id)?.has(b.id) === true || below.get(b.id)?.has(a.id) === true;
  const at = (rule: Rule, code: string, data: Problem['data']): Problem[] => {
    const problem = documents.get(`rule:${rule.id}`)?.problemAt(['outranks'], code, data);
    return problem === undefined ? [] : [problem];
  };
  const circles = rules
    .filter((rule) => below.get(rule.id)?.has(rule.id))
    .flatMap((rule) => at(rule, 'outranks-itself', { rule: rule.id }));
  const ties = rules.flatMap((rule, index) =>
    rules
      .slice(index + 1)
      .filter((other) => other.question === rule.question && isVerdict(rule.gives) && isVerdict(other.gives))
      // Same verdict still needs an order: the winner words the headline, and two headlines cannot stand at once.
      .filter((other) => !ordered(rule, other) && !cannotBoth(rule, other))
      .flatMap((other) => at(other, 'tie-without-rank', { rule: other.id, other: rule.id })),
  );
  return [...circles, ...ties];
};
