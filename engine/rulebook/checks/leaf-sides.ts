/** Both sides of a comparison must fit: a known operator, one right-hand side, no bare number, one dimension. */
import { operatorNamed, operators } from '../../operators.ts';
import type { Problem } from '../../problem.ts';
import type { Leaf, Rulebook } from '../../types.ts';
import { dimensionOf, unitOf } from '../../units.ts';
import { leavesOf } from '../conditions.ts';
import { nearest } from '../nearest.ts';
import type { KnownFact, RulebookCheck } from './index.ts';

type Fault = { readonly key: string; readonly code: string; readonly data: Problem['data'] };

/** Undefined for a unit that is not on the list: that is a problem of its own. */
const dimension = (book: Rulebook, unit: string | null): string | undefined => {
  if (unit === null) return 'choice';
  if (unit === 'date' || unit === 'date-time') return unit;
  return unitOf(book.units, unit) === undefined ? undefined : dimensionOf(book.units, unit);
};

const sideCount = (leaf: Leaf): number =>
  [leaf.figure, leaf.other, leaf.value].filter((side) => side !== null).length;

const faultOf = (leaf: Leaf, book: Rulebook, facts: readonly KnownFact[]): Fault | undefined => {
  const operator = operatorNamed(leaf.operator);
  if (operator === undefined) {
    const names = operators.map((each) => each.name);
    const suggestion = nearest(leaf.operator, names);
    return {
      key: 'operator',
      code: 'unknown-operator',
      data: { found: leaf.operator, wants: names, ...(suggestion === undefined ? {} : { suggestion }) },
    };
  }
  const sides = sideCount(leaf);
  // A `known` leaf may name the figure that stands behind its fact, so that the reason can show it.
  if (operator.takes === 'nothing' ? leaf.other !== null || leaf.value !== null : sides !== 1) {
    return { key: 'operator', code: 'wrong-sides', data: { operator: leaf.operator, sides } };
  }
  if (typeof leaf.value === 'number' && leaf.value !== 0 && leaf.value !== 1) {
    return { key: 'value', code: 'bare-number', data: { found: leaf.value } };
  }
  if ((operator.takes === 'list') !== Array.isArray(leaf.value) && operator.takes !== 'nothing') {
    const key = leaf.value === null ? 'operator' : 'value';
    return { key, code: 'wrong-sides', data: { operator: leaf.operator, sides } };
  }
  const left = facts.find((fact) => fact.id === leaf.fact);
  if (left === undefined) return undefined;
  const leftIs = dimension(book, left.unit);
  if (operator.takes === 'order' && leftIs === 'choice') {
    return { key: 'operator', code: 'no-order', data: { fact: leaf.fact, operator: leaf.operator } };
  }
  const right =
    leaf.figure !== null
      ? book.figures[leaf.figure]?.unit
      : facts.find((fact) => fact.id === leaf.other)?.unit;
  if (right === undefined || operator.takes === 'nothing') return undefined;
  const rightIs = dimension(book, right);
  return leftIs === rightIs || leftIs === undefined || rightIs === undefined
    ? undefined
    : {
        key: leaf.figure !== null ? 'figure' : 'other',
        code: 'unit-clash',
        data: { fact: leaf.fact, is: leftIs, against: rightIs },
      };
};

export const leafSides: RulebookCheck = ({ book, documents }, { facts }) =>
  Object.values(book.rules).flatMap((rule) =>
    leavesOf(rule.when).flatMap(({ leaf, path }): Problem[] => {
      const fault = faultOf(leaf, book, facts);
      const document = documents.get(`rule:${rule.id}`);
      return fault === undefined || document === undefined
        ? []
        : [document.problemAt([...path, fault.key], fault.code, fault.data)];
    }),
  );
