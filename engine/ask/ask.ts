/** A request → an answer: which groups, each group's part, results and totals, everything assumed, and a reference. */
import type { Workings } from '../facts/workings.ts';
import type { Answer, Assumed, Group, Part, Question, Reason, Request, Result, Step } from '../types.ts';
import { gather } from './gather.ts';
import { type Answered, answerPart, firstYes, spanEnd } from './part.ts';
import { rulesOf, type World, workingsOn } from './world.ts';

/** Groups a question speaks of when none is named: those that its `concerns` picks, else all that have arrived. */
export const concernedGroups = (world: World, question: Question, on: string): readonly string[] => {
  const { concerns } = question;
  const workings = workingsOn(world, on, null, []);
  const here = world.state.groups.filter((group) => group.arrived <= on);
  const fits = (group: Group): boolean => {
    if (concerns === null) return true;
    const { value } = workings.step(concerns.fact, group.name);
    return value !== null && concerns.oneOf.includes(String(value));
  };
  const chosen = here.filter(fits);
  // Where it concerns none of them, the rules say so for each: that is an answer too.
  return (chosen.length > 0 ? chosen : here).map((group) => group.name);
};

const sameAssumption = (a: Assumed, b: Assumed): boolean =>
  a.id === b.id && a.group === b.group && JSON.stringify(a.values) === JSON.stringify(b.values);

/** Everything taken for granted in these steps, each once. */
export const assumedIn = (steps: readonly Step[]): readonly Assumed[] =>
  steps
    .flatMap((step) => step.assumed)
    .filter((each, index, all) => all.findIndex((other) => sameAssumption(other, each)) === index);

const resultsOf = (
  question: Question,
  parts: readonly { part: Part; workings: Workings }[],
  on: string,
): Result[] => {
  const results: Result[] = [];
  for (const { id, fact, total } of question.results) {
    const own: Result[] = parts.flatMap(({ part, workings }): Result[] => {
      if (fact === 'when') {
        const first = firstYes(part, on);
        return first === null ? [] : [{ id, fact, group: part.group, value: first, unit: 'date' }];
      }
      const step = workings.step(fact, part.group);
      return step.value === null ? [] : [{ id, fact, group: part.group, value: step.value, unit: step.unit }];
    });
    if (total === 'sum' && parts.length > 1 && own.length === parts.length) {
      const sum = own.reduce((all, each) => all + Number(each.value), 0);
      results.push({ id, fact, group: null, value: sum, unit: own[0]?.unit ?? null });
    }
    results.push(...own);
  }
  return results;
};

/** A group that is not there (yet) on that day: nothing can be said of it, and nothing is asked about it either. */
const absentPart = (group: string): Part => ({
  group,
  verdict: 'cannot-say',
  rule: null,
  headline: null,
  reasons: [],
  unknown: [],
  cautions: [],
  remarks: [],
  steps: [],
  when: null,
  turnsOn: [],
  unless: [],
});

const numbered = (parts: readonly Answered['part'][]): Part[] => {
  let n = 0;
  return parts.map((part) => ({
    ...part,
    reasons: part.reasons.map((reason): Reason => {
      n += 1;
      return { ...reason, n };
    }),
  }));
};

/** A reference that a later question can replay from: lines believed, rulebook, day. */
export const referenceOf = (world: World, on: string): string =>
  `${world.state.lines}-${world.book.hash}-${on}`;

/**
 * Answers a request over a folded state.
 * @param deep whether to look ahead for when and by what a verdict turns; a list that gathers answers has no use for it
 * @throws only when the request names a question that the rulebook has not: the caller's bug
 */
export const answer = async (world: World, request: Request, deep = true): Promise<Answer> => {
  const question = world.book.questions[request.question];
  if (question === undefined) throw new Error(`no such question: ${request.question}`);
  if (question.gathers.length > 0) return gather(world, request, question);
  const { on } = request.moment;
  const until = request.until ?? spanEnd(on, question.days);
  const groups: readonly (string | null)[] =
    question.per === 'flock'
      ? [null]
      : request.groups.length > 0
        ? request.groups
        : concernedGroups(world, question, on);
  const rules = rulesOf(world.book, question.id);
  const lookAhead = deep ? Number(workingsOn(world, on, null, []).step('look-ahead', null).value) : 0;
  const isHere = (name: string | null): boolean => world.state.groups.some((group) => group.name === name);
  const absent = groups.flatMap((group) => (group === null || isHere(group) ? [] : [absentPart(group)]));
  const answered: Answered[] = [];
  for (const group of groups.filter((each) => each === null || isHere(each))) {
    answered.push(
      await answerPart(world, {
        question,
        rules,
        group,
        on,
        until,
        supposing: request.supposing,
        lookAhead,
      }),
    );
  }
  const parts = numbered(answered.map((each) => each.part));
  const paired = parts.map((part, index) => ({ part, workings: (answered[index] as Answered).workings }));
  const results = resultsOf(question, paired, on);
  const steps = answered.flatMap((each) => each.workings.steps());
  return {
    request,
    question: question.id,
    parts: [...parts, ...absent],
    results,
    assumed: assumedIn(steps),
    workings: steps,
    problems: world.problems,
    ref: referenceOf(world, on),
  };
};
