/** When a verdict turns, and what would turn it now: found by running the same rules again, never by a formula of their own. */

import { addDays, type Day } from '../day.ts';
import { turningValues } from '../explain/tipping-point.ts';
import type { LeafOutcome } from '../reason/outcomes.ts';
import { leavesOf } from '../rulebook/conditions.ts';
import type { Assumed, Gives, Rule, TurnsOn, Value } from '../types.ts';
import { type Evaluation, verdictOf } from './evaluate.ts';

/** Evaluates the same question for the same group on another day or with one fact supposed. */
export type Again = (change: {
  readonly on?: Day;
  readonly suppose?: { readonly fact: string; readonly value: Value };
}) => Promise<Evaluation>;

/** Only a yes or a no is something to turn to; what cannot be said, or is no verdict, is not. */
const isSettled = (verdict: Gives): boolean => verdict === 'yes' || verdict === 'no';

export interface Turn {
  readonly on: Day;
  readonly verdict: Gives;
  readonly assumed: readonly Assumed[];
}

/** The first day within the look-ahead on which the verdict is another one that is settled, or null. */
export const firstTurn = async (
  now: Evaluation,
  again: Again,
  from: Day,
  days: number,
): Promise<Turn | null> => {
  const verdict = verdictOf(now);
  for (let ahead = 1; ahead <= days; ahead += 1) {
    const on = addDays(from, ahead);
    const then = await again({ on });
    const next = verdictOf(then);
    if (next !== verdict && isSettled(next)) {
      return { on, verdict: next, assumed: then.workings.steps().flatMap((step) => step.assumed) };
    }
  }
  return null;
};

const choicesIn = (rules: readonly Rule[], fact: string): Value[] =>
  rules
    .flatMap((rule) => leavesOf(rule.when))
    .filter(({ leaf }) => leaf.fact === fact)
    .flatMap(({ leaf }) =>
      Array.isArray(leaf.value) ? [...leaf.value] : leaf.value === null ? [] : [leaf.value as Value],
    );

/** How large a change is beside what is there, so that changes of different facts can be set in order. */
const size = (from: Value, to: Value): number =>
  typeof from === 'number' && typeof to === 'number'
    ? Math.abs(to - from) / Math.max(Math.abs(from), Math.abs(to), 1e-9)
    : 1;

/**
 * Every single fact that by changing alone would turn the verdict, each with its nearest turning value, smallest change
 * first. Each one has been tried: the rules were run with it.
 * @param rules those that can decide
 */
export const turningFacts = async (
  now: Evaluation,
  again: Again,
  rules: readonly Rule[],
  stepOf: (fact: string) => number,
  unitOf: (fact: string) => string | null,
  isFixed: (fact: string) => boolean,
): Promise<readonly TurnsOn[]> => {
  const verdict = verdictOf(now);
  const leaves: LeafOutcome[] = now.outcomes
    .filter(({ rule }) => rules.includes(rule))
    .flatMap(({ leaves }) => leaves);
  const found = new Map<string, TurnsOn>();
  for (const leaf of leaves) {
    const { fact } = leaf.leaf;
    if (isFixed(fact)) continue;
    for (const to of turningValues(leaf, stepOf(fact), [...new Set(choicesIn(rules, fact))])) {
      const from = leaf.left ?? null;
      const known = found.get(fact);
      if (from === null || from === to || (known !== undefined && size(from, known.to) <= size(from, to)))
        continue;
      const next = verdictOf(await again({ suppose: { fact, value: to } }));
      if (next !== verdict && isSettled(next)) {
        found.set(fact, { fact, group: now.group, from, to, unit: unitOf(fact), verdict: next });
      }
    }
  }
  return [...found.values()].sort((a, b) => size(a.from ?? 0, a.to) - size(b.from ?? 0, b.to));
};
