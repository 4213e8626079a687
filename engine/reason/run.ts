/** The only place that touches json-rules-engine: it compares the leaves of a question's rules, nothing else. */
import { Engine, type NestedCondition, type RuleProperties, type TopLevelCondition } from 'json-rules-engine';
import { operatorNamed } from '../operators.ts';
import type { Condition, Leaf, Rule, Value } from '../types.ts';

/** Values that the leaves are compared with; undefined stands for not known. */
export interface Values {
  /** A fact's value in base units. */
  fact(id: string): Value | undefined;
  /** A figure's value in base units, entered by its own axes. */
  figure(id: string): number | undefined;
}

/** A leaf with what the rule engine said of it; meaningless where one of its sides is not known. */
export interface Compared {
  readonly leaf: Leaf;
  readonly left: Value | undefined;
  readonly right: Value | readonly string[] | undefined;
  readonly result: boolean;
}

export type ComparedCondition =
  | Compared
  | { readonly all: readonly ComparedCondition[] }
  | { readonly any: readonly ComparedCondition[] }
  | { readonly not: ComparedCondition };

export interface RunResult {
  readonly rule: Rule;
  readonly conditions: ComparedCondition;
  /** The rule engine's own verdict: only of worth when nothing is unknown. */
  readonly engineHeld: boolean;
}

/** Compares every leaf of some rules; the results are in the order of the rules. */
export type Run = (rules: readonly Rule[], values: Values) => Promise<readonly RunResult[]>;

/** Facts and figures share one name space in the rule engine, so figures carry a mark. */
const figureKey = (id: string): string => `figure:${id}`;

const toEngine = (condition: Condition): NestedCondition => {
  if ('all' in condition) return { all: condition.all.map(toEngine) };
  if ('any' in condition) return { any: condition.any.map(toEngine) };
  if ('not' in condition) return { not: toEngine(condition.not) };
  const operator = operatorNamed(condition.operator);
  if (operator === undefined) throw new Error(`no such operator: ${condition.operator}`);
  const value =
    operator.takes === 'nothing'
      ? true
      : condition.figure !== null
        ? { fact: figureKey(condition.figure) }
        : condition.other !== null
          ? { fact: condition.other }
          : condition.value;
  return { fact: condition.fact, operator: operator.engine, value };
};

/** json-rules-engine wants a list at the root; a lone leaf becomes a list of one. */
const rootOf = (condition: Condition): TopLevelCondition =>
  ('fact' in condition ? { all: [toEngine(condition)] } : toEngine(condition)) as TopLevelCondition;

interface RawResult {
  readonly result?: boolean;
  readonly factResult?: unknown;
  readonly valueResult?: unknown;
  readonly all?: readonly RawResult[];
  readonly any?: readonly RawResult[];
  readonly not?: RawResult;
}

/** Lays the engine's results over our own conditions; both trees have the same shape. */
const overlay = (condition: Condition, raw: RawResult | undefined, values: Values): ComparedCondition => {
  if ('all' in condition)
    return { all: condition.all.map((each, index) => overlay(each, raw?.all?.[index], values)) };
  if ('any' in condition)
    return { any: condition.any.map((each, index) => overlay(each, raw?.any?.[index], values)) };
  if ('not' in condition) return { not: overlay(condition.not, raw?.not, values) };
  const right =
    condition.figure !== null
      ? values.figure(condition.figure)
      : condition.other !== null
        ? values.fact(condition.other)
        : (condition.value ?? undefined);
  return { leaf: condition, left: values.fact(condition.fact), right, result: raw?.result === true };
};

/** The facts and figures that a condition compares, in the order in which it names them. */
export const namesIn = (condition: Condition, facts: Set<string>, figures: Set<string>): void => {
  if ('all' in condition) for (const each of condition.all) namesIn(each, facts, figures);
  else if ('any' in condition) for (const each of condition.any) namesIn(each, facts, figures);
  else if ('not' in condition) namesIn(condition.not, facts, figures);
  else {
    facts.add(condition.fact);
    if (condition.other !== null) facts.add(condition.other);
    if (condition.figure !== null) figures.add(condition.figure);
  }
};

/**
 * Lets what waits have its turn: an answer is one long chain of promises, and without a breath between two runs no key would be
 * shown and no timer go off until it ends.
 */
const breathe = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/**
 * Compares every leaf of the rules. One engine a run, since overlapping runs of one engine skip rules; constant facts;
 * no priorities, events or paths, so that every leaf has a result.
 * @returns results in the order of the rules given
 */
export const runRules: Run = async (rules, values) => {
  await breathe();
  const engine = new Engine([], { allowUndefinedFacts: true });
  engine.addOperator('known', (left: unknown) => left !== undefined);
  const facts = new Set<string>();
  const figures = new Set<string>();
  for (const rule of rules) {
    namesIn(rule.when, facts, figures);
    const properties: RuleProperties = {
      name: rule.id,
      conditions: rootOf(rule.when),
      event: { type: rule.id },
    };
    engine.addRule(properties);
  }
  for (const id of facts) engine.addFact(id, values.fact(id), { cache: false });
  for (const id of figures) engine.addFact(figureKey(id), values.figure(id), { cache: false });
  const { results, failureResults } = await engine.run();
  const byName = new Map([...results, ...failureResults].map((result) => [result.name, result]));
  return rules.map((rule) => {
    const result = byName.get(rule.id);
    if (result === undefined) throw new Error(`the rule engine gave no result for ${rule.id}`);
    const raw = result.conditions as unknown as RawResult;
    return {
      rule,
      conditions: overlay(rule.when, 'fact' in rule.when ? raw.all?.[0] : raw, values),
      engineHeld: result.result === true,
    };
  });
};
