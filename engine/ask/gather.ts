/** A list made of other questions' chores: since they come from the same rules and facts, it cannot contradict them. */
import type { Day } from '../day.ts';
import type { Answer, Missing, Part, Question, Request, StepToDo } from '../types.ts';
import { answer, type Depth } from './ask.ts';
import { inOrder } from './order.ts';
import { type World, workingsOn } from './world.ts';

const eachOnce = <T>(items: readonly T[]): T[] => [
  ...new Map(items.map((item) => [JSON.stringify(item), item])).values(),
];

/** Leaves out chores that give way to another one for the same group. */
const withoutPointless = (world: World, steps: readonly StepToDo[]): StepToDo[] =>
  steps.filter((step) => {
    const ways = world.book.rules[step.rule]?.chore?.givesWayTo ?? [];
    return !steps.some((other) => other.group === step.group && ways.includes(other.rule));
  });

/** Whether a question has its place in the round that day: one of the whole flock may name the days it concerns. */
const belongs = (world: World, { per, concerns }: Question, on: Day): boolean => {
  if (per !== 'flock' || concerns === null) return true;
  const { value } = workingsOn(world, on, null, []).step(concerns.fact, null);
  return value !== null && concerns.oneOf.includes(String(value));
};

/**
 * Answers a question that gathers others: their chores in the order of the day, with all cautions and all that is not known.
 * @param depth `tasks` for the chores alone; a list has no use for more than `now`
 */
export const gather = async (
  world: World,
  request: Request,
  question: Question,
  depth: Depth,
): Promise<Answer> => {
  const answers: Answer[] = [];
  for (const id of question.gathers) {
    const asked = world.book.questions[id];
    if (asked === undefined || !belongs(world, asked, request.moment.on)) continue;
    // A question of the whole flock has its place in every round; one of a group only where the group is asked about.
    const groups = asked.per === 'flock' ? [] : request.groups;
    answers.push(
      await answer(
        world,
        { ...request, question: id, groups, until: null },
        depth === 'tasks' ? depth : 'now',
      ),
    );
  }
  const parts = answers.flatMap((each) => each.parts);
  const unknown: Missing[] = eachOnce(parts.flatMap((part) => part.unknown));
  const part: Part = {
    group: null,
    verdict: 'list',
    rule: null,
    headline: null,
    reasons: [],
    unknown,
    cautions: eachOnce(
      parts.flatMap((each) => each.cautions.filter(({ rule }) => world.book.rules[rule]?.daily === true)),
    ),
    // Remarks stay with the single answers: a round is to be worked through, not read.
    remarks: [],
    steps: withoutPointless(
      world,
      parts.flatMap((each) => each.steps),
    ).sort(inOrder),
    when: null,
    turnsOn: [],
    passedOver: [],
    unless: [],
  };
  return {
    request,
    question: question.id,
    parts: [part],
    results: [],
    assumed: eachOnce(answers.flatMap((each) => each.assumed)),
    workings: answers.flatMap((each) => each.workings),
    problems: world.problems,
    pictures: [],
    ref: answers[0]?.ref ?? '',
  };
};
