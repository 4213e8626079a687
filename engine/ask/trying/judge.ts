/** Lays groups that are not there over the state and lets a question's own rules accept or refuse one of them. */
import { addDays, type Day } from '../../day.ts';
import { isVerdict } from '../../rulebook/ranking.ts';
import type { Group, Question, Request, Rule, Supposition, Tries } from '../../types.ts';
import { evaluate, verdictOf } from '../evaluate.ts';
import { type World, workingsOn } from '../world.ts';
import { notThere, worldWith } from './not-there.ts';
import type { Wishes } from './wishes.ts';

export interface Judged {
  readonly accepted: boolean;
  /** How many cautions speak against it. */
  readonly cautions: number;
}

export interface Judge {
  /** The group that would come after these, hatched on a day. */
  next(before: readonly Group[], hatched: Day): Group;
  /** What the rules say of one of the groups when all of them are there. */
  judge(group: Group, groups: readonly Group[], supposing?: readonly Supposition[]): Promise<Judged>;
}

/** A judge for one request. Only rules that decide or warn are run: steps and remarks choose nothing. */
export const makeJudge = (
  world: World,
  request: Request,
  question: Question,
  rules: readonly Rule[],
  { names }: Tries,
  wishes: Wishes,
): Judge => {
  const judging = rules.filter(({ gives }) => isVerdict(gives) || gives === 'caution');
  return {
    next: (before, hatched) => ({
      ...notThere,
      name: names[before.length] ?? `${names[0]} ${before.length + 1}`,
      kind: wishes.kinds[before.length % wishes.kinds.length] ?? '',
      hatched,
      arrived: addDays(hatched, wishes.travel),
      boxed: wishes.birds,
    }),
    judge: async (group, groups, supposing = []) => {
      const workings = workingsOn(worldWith(world, groups), request.moment.on, request.until, [
        ...request.supposing,
        ...supposing,
      ]);
      const evaluation = await evaluate(world, judging, workings, group.name);
      const warning = evaluation.outcomes.filter(
        ({ rule, outcome }) => rule.gives === 'caution' && outcome === 'held',
      );
      return { accepted: verdictOf(evaluation) === question.kind, cautions: warning.length };
    },
  };
};
