/** A list made of other questions' chores: since they come from the same rules and facts, it cannot contradict them. */
import type { Answer, Missing, Part, Question, Request, StepToDo } from '../types.ts';
import { answer } from './ask.ts';
import type { World } from './world.ts';

const timesOfDay = ['now', 'morning', 'midday', 'evening', 'soon'];

const inOrder = (a: StepToDo, b: StepToDo): number =>
  timesOfDay.indexOf(a.at) - timesOfDay.indexOf(b.at) ||
  a.order - b.order ||
  (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

const eachOnce = <T>(items: readonly T[]): T[] => [
  ...new Map(items.map((item) => [JSON.stringify(item), item])).values(),
];

/** Leaves out chores that give way to another one for the same group. */
const withoutPointless = (world: World, steps: readonly StepToDo[]): StepToDo[] =>
  steps.filter((step) => {
    const ways = world.book.rules[step.rule]?.chore?.givesWayTo ?? [];
    return !steps.some((other) => other.group === step.group && ways.includes(other.rule));
  });

/** Answers a question that gathers others: their chores in the order of the day, with all cautions and all that is not known. */
export const gather = async (world: World, request: Request, question: Question): Promise<Answer> => {
  const answers: Answer[] = [];
  for (const id of question.gathers) {
    const asked = world.book.questions[id];
    if (asked === undefined) continue;
    // A question of the whole flock has its place in every round; one of a group only where the group is asked about.
    const groups = asked.per === 'flock' ? [] : request.groups;
    answers.push(await answer(world, { ...request, question: id, groups, until: null }, false));
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
    ref: answers[0]?.ref ?? '',
  };
};
