/** Lines that plainly ask what would turn the last answer, or when it turns. */
import type { Answer } from '../../engine/types.ts';
import type { Token } from '../say/tokens.ts';
import { canTurn, sayAllTurns, sayAllWhens } from '../say/turns.ts';
import { readingOf } from '../understand/reading-of.ts';
import { type Flock, speechFor } from './flock.ts';
import { exits, type Memory, type Reply } from './reply.ts';
import { sayOnly } from './say-only.ts';

const turning = '(?:turn|change|flip|tip|alter|move)';
const it = '(?:it|that|this|the answer|the verdict|your answer|your mind)';

const asksWhat: readonly RegExp[] = [
  new RegExp(`^what (?:would|could|might|will|can) ${turning} ${it}$`),
  new RegExp(`^what (?:would|does) it take(?: to ${turning} ${it})?$`),
  /^what (?:would have|has|needs) to (?:change|be different|happen)(?: for a (?:yes|no))?$/,
  new RegExp(`^what (?:would|could|might) make ${it} (?:a )?(?:yes|no)$`),
];

const asksWhen: readonly RegExp[] = [
  /^(?:from )?when(?: then)?$/,
  new RegExp(`^when (?:will|would|does|might|is) ${it} (?:expected to )?${turning}s?$`),
  new RegExp(`^when (?:will|would) ${it} be (?:a )?(?:yes|no)$`),
];

const nothingToTurn: readonly Token[] = [
  { t: 'claim', text: 'There is no answer yet that could turn.' },
  { t: 'next', text: 'Ask something first, such as "can they go out".' },
];

const turnsOf = ({ parts }: Answer) => ({
  when: parts.find(({ when }) => when !== null)?.when?.on ?? null,
});

/** The reply to such a line; null where it is none, or where "when" is asked of an answer that does not turn. */
export const answerTurnsAsked = (flock: Flock, words: string, memory: Memory): Reply | null => {
  if (memory.asking !== null) return null;
  const said = words
    .trim()
    .toLowerCase()
    .replace(/^(?:and|so|but|ok) /, '')
    .replace(/[?!.]+$/, '');
  const isAny = (patterns: readonly RegExp[]): boolean => patterns.some((pattern) => pattern.test(said));
  const { answer } = memory;
  const speech = speechFor(flock);
  // A question about the last answer, as "why" is.
  const reading = readingOf('why', 'asks what turns the last answer', words);
  const line = { words, reading, memory };
  if (isAny(asksWhat))
    return answer === null
      ? sayOnly(line, nothingToTurn, exits.cannotSay, { verdict: 'cannot-say' })
      : sayOnly(line, sayAllTurns(speech, answer), exits.answered, turnsOf(answer));
  return answer !== null && canTurn(speech, answer) && isAny(asksWhen)
    ? sayOnly(line, sayAllWhens(speech, answer), exits.answered, turnsOf(answer))
    : null;
};
