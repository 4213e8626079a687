/** Rules compared before: one that is compared with the very same values again has the same result. */
import type { Rule, Value } from '../types.ts';
import { namesIn, type Run, type RunResult, runRules, type Values } from './run.ts';

interface Names {
  readonly facts: readonly string[];
  readonly figures: readonly string[];
}

const namesOf = ({ when }: Rule): Names => {
  const [facts, figures] = [new Set<string>(), new Set<string>()];
  namesIn(when, facts, figures);
  return { facts: [...facts], figures: [...figures] };
};

/** A value so that no two look alike as JSON text: what is not known is null there, and so would be infinity. */
const inKey = (value: Value | undefined): unknown =>
  typeof value === 'number' && !Number.isFinite(value) ? [String(value)] : (value ?? null);

/** Makes a run that remembers, to be kept for one answer or one comparison of answers. */
export const rememberRuns = (): Run => {
  const names = new Map<Rule, Names>();
  const known = new Map<Rule, Map<string, RunResult>>();
  /** All that a rule is compared with, as one text. */
  const keyOf = (rule: Rule, { fact, figure }: Values): string => {
    const { facts, figures } = names.get(rule) ?? namesOf(rule);
    return JSON.stringify([...facts.map((id) => fact(id)), ...figures.map((id) => figure(id))].map(inKey));
  };
  return async (rules, values) => {
    for (const rule of rules) if (!names.has(rule)) names.set(rule, namesOf(rule));
    // Facts before figures, as in a run that remembers nothing: the order of the workings is part of an answer.
    for (const rule of rules) for (const id of names.get(rule)?.facts ?? []) values.fact(id);
    const keys = new Map(rules.map((rule) => [rule, keyOf(rule, values)]));
    const resultOf = (rule: Rule): RunResult | undefined => known.get(rule)?.get(keys.get(rule) ?? '');
    const fresh = rules.filter((rule) => resultOf(rule) === undefined);
    for (const result of fresh.length === 0 ? [] : await runRules(fresh, values)) {
      const ofRule = known.get(result.rule) ?? new Map<string, RunResult>();
      known.set(result.rule, ofRule);
      ofRule.set(keys.get(result.rule) ?? '', result);
    }
    return rules.flatMap((rule) => resultOf(rule) ?? []);
  };
};
