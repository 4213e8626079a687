/** A rule's own cases: whether it comes out in each of them as the case says. */
import { outcomeOf } from '../reason/outcomes.ts';
import { runRules, type Values } from '../reason/run.ts';
import { figureAt, inForce } from '../rulebook/figures.ts';
import type { Outcome, Rule, Rulebook, RuleCase, Value } from '../types.ts';
import { fromBase, readQuantity, toBase } from '../units.ts';

/** A case that came out otherwise than it says. */
export interface CaseFault {
  readonly rule: string;
  /** Its place in the list of cases. */
  readonly index: number;
  readonly name: string;
  readonly expect: Outcome;
  readonly found: Outcome;
}

const inBase = (book: Rulebook, given: string | number | boolean): Value => {
  const quantity = typeof given === 'string' ? readQuantity(book.units, given) : undefined;
  return quantity === undefined ? given : toBase(book.units, quantity);
};

/** The values of one case: its own facts, its own figures, and the book's latest figures where their axes are given. */
const valuesOf = (book: Rulebook, rule: RuleCase): Values => {
  const fact = (id: string): Value | undefined => {
    const given = Object.hasOwn(rule.facts, id) ? rule.facts[id] : undefined;
    return given === undefined ? undefined : inBase(book, given);
  };
  const figure = (id: string): number | undefined => {
    const given = Object.hasOwn(rule.figures, id) ? rule.figures[id] : undefined;
    if (given !== undefined) return Number(inBase(book, given));
    const known = book.figures[id];
    if (known === undefined) return undefined;
    const axes = known.by.map((axis) => {
      const value = fact(axis.fact);
      return typeof value === 'number' && axis.unit !== null ? fromBase(book.units, value, axis.unit) : value;
    });
    if (axes.some((each) => each === undefined)) return undefined;
    const use = figureAt(known, inForce(known, '9999-12-31').from, axes as Value[]);
    return use === undefined ? undefined : toBase(book.units, use);
  };
  return { fact, figure };
};

/** How one case of a rule comes out. */
export const outcomeIn = async (book: Rulebook, rule: Rule, each: RuleCase): Promise<Outcome> => {
  const [result] = await runRules([rule], valuesOf(book, each));
  if (result === undefined) throw new Error(`no result for ${rule.id}`);
  return outcomeOf(result).outcome;
};

/** The cases of these rules that come out otherwise than they say, in the order of the file. */
export const caseFaults = async (book: Rulebook, rules: readonly Rule[]): Promise<readonly CaseFault[]> => {
  const faults: CaseFault[] = [];
  for (const rule of rules) {
    for (const [index, each] of rule.cases.entries()) {
      const found = await outcomeIn(book, rule, each);
      if (found !== each.expect)
        faults.push({ rule: rule.id, index, name: each.name, expect: each.expect, found });
    }
  }
  return faults;
};
