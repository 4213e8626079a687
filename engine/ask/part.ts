/** The answer for one group: verdict, reasons, what is not known, cautions, chores, and when and by what it would turn. */
import { addDays, type Day } from '../day.ts';
import { type Filling, sentence } from '../explain/sentence.ts';
import { missingFor, reasonsFor, type Told } from '../explain/why.ts';
import { passedOver } from '../explain/why-not.ts';
import type { Workings } from '../facts/workings.ts';
import { isVerdict } from '../rulebook/ranking.ts';
import type { Gives, Part, Question, Reason, Rule, StepToDo, Supposition } from '../types.ts';
import { isDone } from './done.ts';
import { type Evaluation, evaluate, verdictOf } from './evaluate.ts';
import { inOrder } from './order.ts';
import { groundsFor } from './turning/grounds.ts';
import { turningChanges } from './turning/search.ts';
import { type Again, firstTurn, type Trial } from './turns.ts';
import { type World, workingsOn } from './world.ts';

export interface PartRequest {
  readonly question: Question;
  readonly rules: readonly Rule[];
  readonly group: string | null;
  readonly on: Day;
  readonly until: Day | null;
  readonly supposing: readonly Supposition[];
  /** How many days to look ahead for the turn; 0 for not at all. */
  readonly lookAhead: number;
  /** Whether reasons are told, and what is not known or was passed over; else only what the rules came to. */
  readonly isWhole: boolean;
  /** Whether what would turn it is looked for too; the dearest part of an answer. */
  readonly withTurns: boolean;
}

const fillingOf = (workings: Workings, request: PartRequest): Filling => ({
  group: request.group,
  on: request.on,
  until: request.until,
  fact: (id) => {
    const { value, unit } = workings.step(id, request.group);
    return { value, unit };
  },
  figure: (id) => workings.figure(id, request.group)?.use,
});

const byOf = (fact: string | null, filling: Filling): string | null => {
  const value = fact === null ? null : filling.fact(fact).value;
  return typeof value === 'string' ? value : null;
};

const choresOf = (world: World, evaluation: Evaluation, filling: Filling, on: Day): StepToDo[] =>
  evaluation.outcomes
    .filter(({ rule, outcome }) => outcome === 'held' && rule.chore !== null)
    .filter(({ rule }) => rule.gives === 'step' || rule === evaluation.choice.winner?.rule)
    .flatMap(({ rule }) =>
      rule.chore === null
        ? []
        : [
            {
              id: rule.id,
              rule: rule.id,
              question: rule.question,
              group: evaluation.group,
              at: rule.chore.at,
              by: byOf(rule.chore.by, filling),
              order: rule.chore.order,
              says: sentence(rule.chore.says, filling),
              rightWhen: rule.chore.rightWhen === null ? null : sentence(rule.chore.rightWhen, filling),
              ringWhen: rule.chore.ringWhen === null ? null : sentence(rule.chore.ringWhen, filling),
              done:
                rule.chore.doneBy !== null && isDone(world.state, rule.chore.doneBy, evaluation.group, on),
              remind:
                rule.chore.remind === null
                  ? null
                  : (evaluation.workings.figure(rule.chore.remind, evaluation.group)?.base ?? null),
            },
          ],
    );

/** A trial goes before what the request supposes. */
const toSupposition = ({ fact, group, value }: Trial): Supposition => ({
  what: { fact },
  value,
  adds: false,
  group: group ?? undefined,
});

export interface Answered {
  readonly part: Omit<Part, 'reasons'> & { readonly reasons: readonly Omit<Reason, 'n'>[] };
  readonly workings: Workings;
}

/** Works one part out. The same function serves today, another day, and a supposition. */
export const answerPart = async (world: World, request: PartRequest): Promise<Answered> => {
  const { question, rules, group, on, until, supposing, isWhole } = request;
  const workings = workingsOn(world, on, until, supposing);
  const evaluation = await evaluate(world, rules, workings, group);
  const filling = fillingOf(workings, request);
  const told: Told = {
    choice: evaluation.choice,
    outcomes: evaluation.outcomes,
    group,
    filling,
    figure: (id) => workings.figure(id, group)?.use,
    unitOf: (id) => workings.step(id, group).unit,
  };
  const verdict: Gives = verdictOf(evaluation);
  // Cautions, steps and remarks turn nothing, and some of them are long in the working.
  const deciding = rules.filter(({ gives }) => isVerdict(gives));
  const workingsWith = (trials: readonly Trial[], day: Day): Workings =>
    workingsOn(world, day, until, [...trials.map(toSupposition), ...supposing]);
  const again: Again = ({ on: day = on, suppose = [] }) =>
    evaluate(world, deciding, workingsWith(suppose, day), group);
  // Without a verdict there is nothing to turn: what is missing comes first.
  const turns = question.turns && request.lookAhead > 0 && evaluation.choice.winner !== null;
  const { winner, open } = evaluation.choice;
  const having = (gives: Gives) =>
    evaluation.outcomes
      .filter(({ rule, outcome }) => rule.gives === gives && outcome === 'held')
      .map(({ rule }) => ({ rule: rule.id, says: sentence(rule.says, filling), source: rule.source }));
  return {
    workings,
    part: {
      group,
      verdict,
      rule: winner?.rule.id ?? null,
      headline: winner === null ? null : sentence(winner.rule.says, filling),
      reasons: isWhole ? reasonsFor(told) : [],
      unknown: isWhole ? missingFor(told, (fact) => workings.step(fact, group).missing) : [],
      cautions: having('caution'),
      remarks: having('remark'),
      steps: choresOf(world, evaluation, filling, on).sort(inOrder),
      when: turns ? await firstTurn(evaluation, again, on, request.lookAhead) : null,
      // An amount is no verdict that could be turned; only the calendar brings one that is.
      turnsOn:
        turns && request.withTurns && verdict !== 'amount' && verdict !== 'list'
          ? await turningChanges(
              evaluation,
              again,
              groundsFor(world.book, deciding, evaluation, (trials) => workingsWith(trials, on)),
            )
          : [],
      passedOver: isWhole ? passedOver(told) : [],
      // A verdict that nothing can be said claims nothing that another rule could overrule: what is missing is asked for instead.
      unless:
        !isWhole || winner === null || winner.rule.gives === 'cannot-say'
          ? []
          : open
              .filter(({ rule }) => rule.gives !== winner.rule.gives)
              .map(({ rule }) => ({ rule: rule.id, says: sentence(rule.says, filling) })),
    },
  };
};

/** The day on which a part's verdict is yes for the first time: today, the day it turns, or null. */
export const firstYes = (part: Pick<Part, 'verdict' | 'when'>, on: Day): Day | null =>
  part.verdict === 'yes' ? on : part.when?.verdict === 'yes' ? part.when.on : null;

/** Last day of a span of so many days that begins on a day. */
export const spanEnd = (on: Day, days: number): Day | null => (days > 0 ? addDays(on, days - 1) : null);
