/**
 * Answers a question by trying groups that are not there: each is laid over the state as if it had been ordered, and the
 * question's own rules accept or refuse it. So a plan rests on rule files like every other answer, and "why not then" is
 * the highest-ranking rule that refuses. A year of weeks is some fifty runs of the rules for a group, about 5 ms each.
 */
import { daysBetween } from '../../day.ts';
import type { Group, Question, Request, Rule, Supposition, Tries } from '../../types.ts';
import type { World } from '../world.ts';
import { makeJudge } from './judge.ts';
import { worldWith } from './not-there.ts';
import { daysAfter, findPlans, offAim } from './search.ts';
import { wishesOf } from './wishes.ts';

/** A group to answer for, in the world in which it stands; `brief` for one that is only offered beside the plan. */
export interface Tried {
  readonly world: World;
  readonly group: string;
  readonly brief: boolean;
  readonly supposing: readonly Supposition[];
}

/**
 * The groups to answer for: the best plan's, each accepted by the rules; other plans beside it; or the day asked about
 * with the rule that refuses it, and the nearest day that none refuses.
 */
export const tryGroups = async (
  world: World,
  request: Request,
  question: Question,
  rules: readonly Rule[],
  tries: Tries,
): Promise<readonly Tried[]> => {
  const { on } = request.moment;
  const wishes = wishesOf(world, request, tries);
  const judge = makeJudge(world, request, question, rules, tries, wishes);
  const cameTo = (outcome: string): readonly Supposition[] => [
    { what: { fact: tries.outcome }, value: outcome, adds: false },
  ];
  const told = (groups: readonly Group[], brief: boolean): readonly Tried[] =>
    groups.map(({ name }) => ({ world: worldWith(world, groups), group: name, brief, supposing: [] }));

  const { plans, stuckAfter } = await findPlans(judge, wishes, on);
  if (plans.length > 0)
    return plans.flatMap(({ groups }, rank) => {
      const named = groups.map((group) => ({
        ...group,
        name: `${group.name} ${tries.plans[rank] ?? rank + 1}`,
      }));
      return told(rank === 0 ? groups : named, rank > 0);
    });

  const [asked] = [...daysAfter(wishes, stuckAfter)].sort(
    (one, other) => offAim(wishes, on, stuckAfter, one) - offAim(wishes, on, stuckAfter, other),
  );
  if (asked === undefined) return told(stuckAfter, false);
  const refused = judge.next(stuckAfter, asked);
  const placed = told([...stuckAfter, refused], false).map((each) =>
    each.group === refused.name ? { ...each, supposing: cameTo('refused') } : each,
  );
  const nearest = [...wishes.beyond].sort(
    (one, other) => Math.abs(daysBetween(asked, one)) - Math.abs(daysBetween(asked, other)),
  );
  for (const day of stuckAfter.length > 0 ? [] : nearest) {
    const plain = judge.next([], day);
    const moved = { ...plain, name: `${plain.name} ${tries.instead}` };
    if (!(await judge.judge(moved, [moved], cameTo('instead'))).accepted) continue;
    const over = worldWith(world, [moved]);
    return [...placed, { world: over, group: moved.name, brief: true, supposing: cameTo('instead') }];
  }
  return placed;
};
