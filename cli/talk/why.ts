/** "why", "why 2", "why 2.1" and "why 7.5 lb": all reasons of the last answer, one of them, what it was made of, or a number that was said. */
import { stepsAt, stepsBehind, stepsSaid } from '../../engine/explain/drill.ts';
import type { Answer, Step } from '../../engine/types.ts';
import type { Speech } from '../say/speech.ts';
import type { Token } from '../say/tokens.ts';
import { saySteps, sayWhy, sayWorking, stepsShownAs } from '../say/why.ts';

export interface Explained {
  readonly tokens: readonly Token[];
  /** False when the words point at something that the answer does not have. */
  readonly isFound: boolean;
}

/** Where a value that was said stands when it is under no numbered reason: `0.3` is the third value said. */
const saidAnywhere = 0;

/** The way into an answer that a line names: `2.1` is the first part of what is behind reason 2. */
const wayIn = (words: string): { readonly way: readonly number[]; readonly number: number } | null => {
  const found = /\d+(?:\.\d+)*/.exec(words)?.[0];
  return found === undefined ? null : { way: found.split('.').map(Number), number: Number(found) };
};

const stepsOn = (answer: Answer, [n, ...way]: readonly number[]): readonly Step[] | undefined => {
  if (n === saidAnywhere) {
    const [at = 0, ...rest] = way;
    const step = stepsSaid(answer)[at - 1];
    return step === undefined ? undefined : stepsAt(answer, [step], rest);
  }
  const reason = answer.parts.flatMap((part) => part.reasons).find((each) => each.n === n);
  return reason === undefined || way.length === 0
    ? undefined
    : stepsAt(answer, stepsBehind(answer, reason), way);
};

/** Explains as much of an answer as the words ask for. @param lines raw lines of the ledger, line 1 first */
export const explainWhy = (
  speech: Speech,
  answer: Answer,
  lines: readonly string[],
  words: string,
): Explained => {
  const said = wayIn(words);
  if (said === null) return { tokens: sayWhy(speech, answer), isFound: true };
  const reasons = answer.parts.flatMap((part) => part.reasons);
  const reason = said.way.length === 1 ? reasons.find((each) => each.n === said.way[0]) : undefined;
  if (reason !== undefined) return { tokens: sayWorking(speech, answer, lines, reason), isFound: true };
  const below = stepsOn(answer, said.way);
  if (below !== undefined)
    return { tokens: saySteps(speech, answer, lines, below, said.way.join('.')), isFound: true };
  const values = stepsSaid(answer);
  const shown = stepsShownAs(speech, values, said.number);
  if (shown.length > 0) {
    const tokens = shown.flatMap((step) =>
      saySteps(speech, answer, lines, [step], `${saidAnywhere}.${values.indexOf(step) + 1}`),
    );
    return { tokens, isFound: true };
  }
  const range =
    reasons.length === 0 ? 'It has no numbered reasons.' : `Its reasons are numbered 1 to ${reasons.length}.`;
  return {
    tokens: [{ t: 'claim', text: `The last answer has no reason ${said.way.join('.')}. ${range}` }],
    isFound: false,
  };
};
