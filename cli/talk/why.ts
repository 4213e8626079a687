/** "why", "why 2", "why 2.1" and "why 7.5 lb": all reasons of the last answer, one of them, what it was made of, or a number that was said. */
import { stepsAt, stepsBehind } from '../../engine/explain/drill.ts';
import type { Answer, Step } from '../../engine/types.ts';
import type { Speech } from '../say/speech.ts';
import type { Token } from '../say/tokens.ts';
import { saySteps, sayWhy, sayWorking } from '../say/why.ts';
import { openable, saidAnywhere, sayNumber } from '../say/why-number.ts';

export interface Explained {
  readonly tokens: readonly Token[];
  /** False when the words point at something that the answer does not have. */
  readonly isFound: boolean;
}

/** What a line points at: a way into an answer, `2.1` being the first part of what is behind reason 2, or a number that it says. */
interface Pointed {
  readonly way: readonly number[] | null;
  readonly number: string;
  /** Whether the words speak of an amount, as in "why 2 lb" and "why the 2", so that it is no reason's number. */
  readonly isAmount: boolean;
}

const pointedAt = (words: string): Pointed | null => {
  const found = /([$€£]|\bthe\s+)?(\d+(?:[.,:]\d+)*)(\s*[^\s.,:;?!\d])?/i.exec(words);
  const number = found?.[2];
  if (found === null || number === undefined) return null;
  const isWay = /^\d+(?:\.\d+)*$/.test(number);
  return {
    way: isWay ? number.split('.').map(Number) : null,
    number,
    isAmount: found[1] !== undefined || found[3] !== undefined,
  };
};

const stepsOn = (answer: Answer, [n, ...way]: readonly number[]): readonly Step[] | undefined => {
  if (n === saidAnywhere) {
    const [at = 0, ...rest] = way;
    const step = openable(answer)[at - 1];
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
  const pointed = pointedAt(words);
  if (pointed === null) return { tokens: sayWhy(speech, answer), isFound: true };
  const { way, number, isAmount } = pointed;
  const asAmount = (): readonly Token[] => sayNumber(speech, answer, lines, number);
  const amount = isAmount ? asAmount() : [];
  if (amount.length > 0) return { tokens: amount, isFound: true };
  const reasons = answer.parts.flatMap((part) => part.reasons);
  const reason = way?.length === 1 ? reasons.find((each) => each.n === way[0]) : undefined;
  if (reason !== undefined) return { tokens: sayWorking(speech, answer, lines, reason), isFound: true };
  const below = way === null ? undefined : stepsOn(answer, way);
  if (below !== undefined) return { tokens: saySteps(speech, answer, lines, below, number), isFound: true };
  const elsewhere = isAmount ? [] : asAmount();
  if (elsewhere.length > 0) return { tokens: elsewhere, isFound: true };
  const range =
    reasons.length === 0 ? 'It has no numbered reasons.' : `Its reasons are numbered 1 to ${reasons.length}.`;
  return {
    tokens: [{ t: 'claim', text: `The last answer has no reason ${number}. ${range}` }],
    isFound: false,
  };
};
