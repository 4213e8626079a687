/** One level down an answer: what a fact was made of, as recorded while it was worked out. */
import type { Answer, Reason, Step } from '../types.ts';

const same = (step: Step, fact: string, group: string | null): boolean =>
  step.fact === fact && (step.group === null || step.group === group);

/** The recorded step of a fact for a group, or of the flock; undefined where the answer never worked it out. */
export const stepOf = (answer: Answer, fact: string, group: string | null): Step | undefined =>
  answer.workings.find((step) => same(step, fact, group));

/** The steps behind one reason: its fact, and the fact it was held against. */
export const stepsBehind = (answer: Answer, reason: Reason): readonly Step[] =>
  [reason.fact.id, ...(reason.other === null ? [] : [reason.other.id])].flatMap(
    (fact) => stepOf(answer, fact, reason.group) ?? [],
  );

/** The steps that went straight into a step. */
export const stepsInto = (answer: Answer, step: Step): readonly Step[] =>
  step.facts.flatMap(({ fact, group }) => stepOf(answer, fact, group) ?? []);
