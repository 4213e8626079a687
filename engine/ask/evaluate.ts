/** One question for one group at one moment: its rules compared, folded and ranked. */

import type { Workings } from '../facts/workings.ts';
import { type Choice, choose } from '../reason/choose.ts';
import { outcomeOf, type RuleOutcome } from '../reason/outcomes.ts';
import { runRules } from '../reason/run.ts';
import type { Gives, Rule } from '../types.ts';
import type { World } from './world.ts';

export interface Evaluation {
  readonly group: string | null;
  readonly workings: Workings;
  /** Every rule of the question, highest-ranking first. */
  readonly outcomes: readonly RuleOutcome[];
  readonly choice: Choice;
}

/** Evaluates rules given in rank order over a moment's workings. */
export const evaluate = async (
  { memory }: World,
  ranked: readonly Rule[],
  workings: Workings,
  group: string | null,
): Promise<Evaluation> => {
  const results = await (memory?.run ?? runRules)(ranked, {
    fact: (id) => workings.step(id, group).value ?? undefined,
    figure: (id) => workings.figure(id, group)?.base,
  });
  const outcomes = results.map(outcomeOf);
  return { group, workings, outcomes, choice: choose(outcomes) };
};

/** What the evaluation comes to; `cannot-say` when no rule speaks. */
export const verdictOf = ({ choice }: Evaluation): Gives => choice.winner?.rule.gives ?? 'cannot-say';
