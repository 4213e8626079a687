/** A reply that only talks: its first line is its headline as data, and the others are its steps. */
import { emptyJson, type JsonAnswer } from '../say/as-json.ts';
import { plain } from '../say/plain.ts';
import type { Token } from '../say/tokens.ts';
import type { Reading } from '../understand/types.ts';
import { heardAsJson } from './heard-as-json.ts';
import type { Memory, Reply } from './reply.ts';

/** The line that is replied to. */
export interface Line {
  readonly words: string;
  readonly reading: Reading;
  /** What stays in mind; nothing is offered any more. */
  readonly memory: Memory;
}

/** Makes the reply. @param more keys of the data that are otherwise than that it is a list about the answer in mind */
export const sayOnly = (
  { words, reading, memory }: Line,
  tokens: readonly Token[],
  exit: number,
  more: Partial<JsonAnswer> = {},
): Reply => {
  const [headline = '', ...steps] = plain(tokens, Number.POSITIVE_INFINITY).filter((line) => line !== '');
  return {
    tokens,
    json: {
      ...emptyJson(words, heardAsJson(reading)),
      verdict: 'list',
      headline,
      steps,
      ref: memory.answer?.ref ?? null,
      ...more,
    },
    record: null,
    exit,
    memory: { ...memory, choices: [] },
  };
};
