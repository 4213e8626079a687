/** The rule files are their own tests: the rulebook loads without a problem, and every case of every rule comes out as it says. */
import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../engine/reason/outcomes.ts';
import { runRules } from '../engine/reason/run.ts';
import { figureAt } from '../engine/rulebook/figures.ts';
import type { RuleCase, Value } from '../engine/types.ts';
import { fromBase, readQuantity, toBase } from '../engine/units.ts';
import { rulebook } from './helpers/rulebook-of.ts';

const { book, problems } = rulebook();

const inBase = (given: string | number | boolean): Value => {
  const quantity = typeof given === 'string' ? readQuantity(book.units, given) : undefined;
  return quantity === undefined ? given : toBase(book.units, quantity);
};

/** The values of one case: its own facts, its own figures, and the rulebook's figures where their axes are given. */
const valuesOf = (rule: RuleCase) => {
  const fact = (id: string): Value | undefined => {
    const given = Object.hasOwn(rule.facts, id) ? rule.facts[id] : undefined;
    return given === undefined ? undefined : inBase(given);
  };
  const figure = (id: string): number | undefined => {
    const given = Object.hasOwn(rule.figures, id) ? rule.figures[id] : undefined;
    if (given !== undefined) return Number(inBase(given));
    const known = book.figures[id];
    if (known === undefined) return undefined;
    const axes = known.by.map((axis) => {
      const value = fact(axis.fact);
      return typeof value === 'number' && axis.unit !== null ? fromBase(book.units, value, axis.unit) : value;
    });
    if (axes.some((each) => each === undefined)) return undefined;
    const use = figureAt(known, '2026-06-01', axes as Value[]);
    return use === undefined ? undefined : toBase(book.units, use);
  };
  return { fact, figure };
};

test('the rulebook has no problem', () => {
  expect(problems).toEqual([]);
});

describe.each(Object.values(book.rules).map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  test.each(rule.cases.map((each) => [each.name, each] as const))('%s', async (_name, each) => {
    const [result] = await runRules([rule], valuesOf(each));
    expect(result && outcomeOf(result).outcome).toBe(each.expect);
  });
});
