/** A request → an answer: which groups, each group's part, results and totals, everything assumed, and a reference. */
import type { Workings } from '../facts/workings.ts';
import { isVerdict } from '../rulebook/ranking.ts';
import type {
  Answer,
  Assumed,
  Group,
  Part,
  PictureData,
  Question,
  Reason,
  Request,
  Result,
  Rule,
  Step,
  Supposition,
} from '../types.ts';
import { foretell } from './foretell.ts';
import { gather } from './gather.ts';
import { type Answered, answerPart, firstYes, spanEnd } from './part.ts';
import { type Imagined, imagine } from './trying/imagine.ts';
import { type Tried, tryGroups } from './trying/try-groups.ts';
import { rulesOf, type World, withoutSupposedAway, workingsOn } from './world.ts';

/** Groups that have arrived. */
const groupsHere = ({ state }: World, on: string): readonly Group[] =>
  state.groups.filter((group) => group.arrived <= on);

/** Those of them that a question speaks of when none is named: all, or those that its `concerns` picks. */
const concernedGroups = (
  world: World,
  { concerns }: Question,
  on: string,
  supposing: readonly Supposition[],
): readonly Group[] => {
  const workings = workingsOn(world, on, null, supposing);
  const fits = (group: Group): boolean => {
    if (concerns === null) return true;
    const { value } = workings.step(concerns.fact, group.name);
    return value !== null && concerns.oneOf.includes(String(value));
  };
  return groupsHere(world, on).filter(fits);
};

/** The groups to answer for where none is named, and what birds that are only thought of were made of. */
const unnamedGroups = (
  world: World,
  question: Question,
  request: Request,
): { readonly groups: readonly string[]; readonly imagined: Imagined | null } => {
  const { on } = request.moment;
  const concerned = concernedGroups(world, question, on, request.supposing);
  const imagined =
    concerned.length > 0 || question.imagines === null ? null : imagine(world, request, question.imagines);
  if (imagined !== null) return { groups: [imagined.group], imagined };
  // Where it concerns none of them, the rules say so for each: that is an answer too.
  const groups = concerned.length > 0 ? concerned : groupsHere(world, on);
  return { groups: groups.map(({ name }) => name), imagined: null };
};

const assumptionKey = ({ id, group, values }: Assumed): string => JSON.stringify([id, group, values]);

/** Everything taken for granted in these steps, each once. */
export const assumedIn = (steps: readonly Step[]): readonly Assumed[] => {
  const each = new Map<string, Assumed>();
  for (const assumed of steps.flatMap((step) => step.assumed)) {
    const key = assumptionKey(assumed);
    if (!each.has(key)) each.set(key, assumed);
  }
  return [...each.values()];
};

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

/** What is drawn beside the parts; the flock's picture is drawn once, though several groups were asked about. */
const picturesOf = (
  { picture }: Question,
  parts: readonly { part: Part; workings: Workings }[],
): readonly PictureData[] => {
  if (picture === null) return [];
  const drawn = parts.flatMap(({ part, workings }): PictureData[] => {
    const { value, group } = workings.step(`${picture}-series`, part.group);
    return typeof value === 'string' ? [{ kind: picture, group, series: value }] : [];
  });
  return drawn.filter(({ group }, at) => drawn.findIndex((each) => each.group === group) === at);
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
  passedOver: [],
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

/** A group to answer for, or the flock, in the world in which it stands. */
type Place = Omit<Tried, 'group'> & { readonly group: string | null };

/**
 * How much of an answer is worked out: `verdict` only what decides it and its results, without reasons; `tasks` what is to be
 * done too; `when` the day it turns instead; `now` all that there is to say of the day itself, `all` also when and by what it turns.
 */
export type Depth = 'verdict' | 'tasks' | 'when' | 'now' | 'all';

/** Whether a rule has a part in an answer that goes so deep. */
const isNeeded = ({ gives, chore }: Rule, depth: Depth): boolean =>
  depth === 'now' || depth === 'all' || isVerdict(gives) || (depth === 'tasks' && chore !== null);

/** A reference that a later question can replay from: lines believed, rulebook, day. */
const referenceOf = (world: World, on: string): string => `${world.state.lines}-${world.book.hash}-${on}`;

/**
 * Answers a request over a folded state.
 * @param depth how far to look beyond today; a list that gathers answers has no use for more than `now`
 * @throws only when the request names a question that the rulebook has not: the caller's bug
 */
export const answer = async (whole: World, request: Request, depth: Depth = 'all'): Promise<Answer> => {
  const believed = withoutSupposedAway(whole, request.supposing);
  const question = believed.book.questions[request.question];
  if (question === undefined) throw new Error(`no such question: ${request.question}`);
  if (question.gathers.length > 0) return gather(believed, request, question, depth);
  const { on } = request.moment;
  const until = request.until ?? spanEnd(on, question.days);
  const { groups, imagined }: { groups: readonly (string | null)[]; imagined: Imagined | null } =
    question.per === 'flock'
      ? { groups: [null], imagined: null }
      : request.groups.length > 0
        ? { groups: request.groups, imagined: null }
        : unnamedGroups(believed, question, request);
  const world = imagined?.world ?? believed;
  const isWhole = depth === 'now' || depth === 'all';
  const rules = rulesOf(world, question.id).filter((rule) => isNeeded(rule, depth));
  const usual = Number(workingsOn(world, on, null, []).step('look-ahead', null).value);
  const lookAhead = depth === 'when' || depth === 'all' ? Math.min(usual, question.ahead ?? usual) : 0;
  const isHere = (name: string | null): boolean => world.state.groups.some((group) => group.name === name);
  const absent = groups.flatMap((group) => (group === null || isHere(group) ? [] : [absentPart(group)]));
  const answered: Answered[] = [];
  const named = { ...world, named: request.groups };
  const places: readonly Place[] =
    question.tries === null
      ? groups
          .filter((each) => each === null || isHere(each))
          .map((group) => ({ world: named, group, brief: false, supposing: [] }))
      : await tryGroups(named, { ...request, until }, question, rules, question.tries);
  for (const { world: place, group, brief, supposing } of places) {
    const foretold =
      group === null
        ? []
        : await foretell(place, { question, group, on, supposing: request.supposing, lookAhead });
    const one = await answerPart(place, {
      question,
      rules,
      group,
      on,
      until,
      supposing: [...request.supposing, ...supposing, ...foretold],
      lookAhead,
      isWhole,
      withTurns: depth === 'all',
    });
    answered.push(
      brief
        ? {
            ...one,
            part: {
              ...one.part,
              reasons: [],
              unknown: [],
              steps: [],
              remarks: [],
              unless: [],
              passedOver: [],
            },
          }
        : one,
    );
  }
  const parts = numbered(answered.map((each) => each.part));
  const paired = parts.map((part, index) => ({ part, workings: (answered[index] as Answered).workings }));
  const results = resultsOf(question, paired, on);
  const pictures = isWhole ? picturesOf(question, paired) : [];
  const steps = [...(imagined?.steps ?? []), ...answered.flatMap((each) => each.workings.steps())];
  return {
    request,
    question: question.id,
    parts: [...parts, ...absent],
    results,
    assumed: assumedIn(steps),
    workings: steps,
    problems: world.problems,
    pictures,
    ref: referenceOf(world, on),
  };
};
