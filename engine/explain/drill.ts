/** Down an answer from anything it says: what each fact was made of, as recorded while it was worked out. */
import type { Answer, FigureUse, Reason, Sentence, Step } from '../types.ts';

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

/** A sentence of an answer, the group it is about, and the rule that says it. */
export interface SentenceSaid {
  readonly says: Sentence;
  readonly group: string | null;
  readonly rule: string;
}

/** Every sentence that an answer says, part by part: claim, reasons, remarks, cautions, tasks, what would overrule it. */
export const sentencesSaid = ({ parts }: Answer): readonly SentenceSaid[] =>
  parts.flatMap((part) => [
    ...(part.headline === null || part.rule === null
      ? []
      : [{ says: part.headline, group: part.group, rule: part.rule }]),
    ...part.reasons.map(({ says, group, rule }) => ({ says, group, rule })),
    ...[...part.remarks, ...part.cautions].map(({ says, rule }) => ({ says, group: part.group, rule })),
    ...part.steps.map(({ says, group, rule }) => ({ says, group, rule })),
    ...part.unless.map(({ says, rule }) => ({ says, group: part.group, rule })),
  ]);

/** The steps of every value that the answer says anywhere: claims, reasons, remarks, cautions, tasks and results. */
export const stepsSaid = (answer: Answer): readonly Step[] =>
  eachOnce([
    ...answer.parts.flatMap((part) => [
      ...(part.headline === null
        ? []
        : factsIn(part.headline).map((fact) => stepOf(answer, fact, part.group))),
      ...part.reasons.flatMap((reason) => stepsBehind(answer, reason)),
    ]),
    ...sentencesSaid(answer).flatMap(({ says, group }) =>
      factsIn(says).map((fact) => stepOf(answer, fact, group)),
    ),
    ...answer.results.map(({ fact, group }) => stepOf(answer, fact, group)),
  ]);

/** The figures that fill its sentences, each once. */
export const figuresSaid = (answer: Answer): readonly FigureUse[] => {
  const used = sentencesSaid(answer).flatMap(({ says }) =>
    Object.values(says.values).flatMap(({ figure }) => figure ?? []),
  );
  return used.filter(
    ({ id, value }, at) => used.findIndex((other) => other.id === id && other.value === value) === at,
  );
};
