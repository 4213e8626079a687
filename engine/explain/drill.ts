/** Down an answer from anything it says: what each fact was made of, as recorded while it was worked out. */
import type { Answer, Reason, Sentence, Step } from '../types.ts';

const same = (step: Step, fact: string, group: string | null): boolean =>
  step.fact === fact && (step.group === null || step.group === group);

/** The recorded step of a fact for a group, or of the flock; undefined where the answer never worked it out. */
export const stepOf = (answer: Answer, fact: string, group: string | null): Step | undefined =>
  answer.workings.find((step) => same(step, fact, group));

const eachOnce = (steps: readonly (Step | undefined)[]): readonly Step[] => [
  ...new Set(steps.filter((step) => step !== undefined)),
];

/** Names in a wording that stand for neither facts nor figures. */
const plain = new Set(['group', 'on', 'until']);

/** Facts whose values fill a wording; the figures in it carry a slash. */
const factsIn = (sentence: Sentence): readonly string[] =>
  Object.keys(sentence.values).filter((name) => !plain.has(name) && !name.includes('/'));

/** The steps behind one reason: its fact, the fact it was held against, and whatever else its words give a value of. */
export const stepsBehind = (
  answer: Answer,
  reason: Pick<Reason, 'fact' | 'other' | 'says' | 'group'>,
): readonly Step[] =>
  eachOnce(
    [reason.fact.id, ...(reason.other === null ? [] : [reason.other.id]), ...factsIn(reason.says)].map(
      (fact) => stepOf(answer, fact, reason.group),
    ),
  );

/** The steps that went straight into a step. */
export const stepsInto = (answer: Answer, step: Step): readonly Step[] =>
  step.facts.flatMap(({ fact, group }) => stepOf(answer, fact, group) ?? []);

/** What went into several steps, in the order in which it is told. */
export const partsOf = (answer: Answer, steps: readonly Step[]): readonly Step[] =>
  steps.flatMap((step) => stepsInto(answer, step));

/**
 * The steps at the end of a way down from some steps: 3 is the third part of them, 3 1 the first part of that.
 * Undefined where the way leads nowhere.
 */
export const stepsAt = (
  answer: Answer,
  steps: readonly Step[],
  way: readonly number[],
): readonly Step[] | undefined => {
  const [first, ...rest] = way;
  if (first === undefined) return steps;
  const part = partsOf(answer, steps)[first - 1];
  return part === undefined ? undefined : stepsAt(answer, [part], rest);
};

/** The steps of every value that the answer says anywhere: claims, reasons, remarks, cautions, tasks and results. */
export const stepsSaid = (answer: Answer): readonly Step[] =>
  eachOnce([
    ...answer.parts.flatMap((part) => [
      ...(part.headline === null
        ? []
        : factsIn(part.headline).map((fact) => stepOf(answer, fact, part.group))),
      ...part.reasons.flatMap((reason) => stepsBehind(answer, reason)),
      ...[...part.remarks, ...part.cautions].flatMap(({ says }) =>
        factsIn(says).map((fact) => stepOf(answer, fact, part.group)),
      ),
      ...part.steps.flatMap((step) => factsIn(step.says).map((fact) => stepOf(answer, fact, step.group))),
    ]),
    ...answer.results.map(({ fact, group }) => stepOf(answer, fact, group)),
  ]);
