/** What comes back for one line: tokens to show, the same as data, an exit code, and what to remember. */
import type { Answer } from '../../engine/types.ts';
import type { JsonAnswer } from '../say/as-json.ts';
import type { Token } from '../say/tokens.ts';
import type { Asking, Draft, Heard, Reading, Supposing } from '../understand/types.ts';

/** Exit codes as promised to scripts. */
export const exits = { answered: 0, problems: 1, notUnderstood: 2, cannotSay: 3, wrongUse: 64 } as const;

/** What "why", "and the reds?", a bare number and the answer to a question back refer to. */
export interface Memory {
  readonly heard: Heard | null;
  /** The last question that was answered, which stays in mind behind records told since. */
  readonly asked: Heard | null;
  readonly answer: Answer | null;
  /** The readings offered last, in the order of their numbers. */
  readonly choices: readonly Reading[];
  readonly asking: Asking | null;
  /** What a what-if has supposed that the conversation is still inside of. */
  readonly inside: readonly Supposing[];
  /** Records of the same breath that wait for the one being asked about. */
  readonly waiting: readonly Draft[];
}

export const nothingYet: Memory = {
  heard: null,
  asked: null,
  answer: null,
  choices: [],
  asking: null,
  inside: [],
  waiting: [],
};

/** The memory once a line has been dealt with: nothing is offered, asked for or waiting any more. The answer before stays in mind. */
export const settled = (memory: Memory, heard: Heard): Memory => ({
  ...memory,
  heard,
  choices: [],
  asking: null,
  waiting: [],
});

/** What was done with a record: the entries as written, or what is still asked for. */
export interface RecordReply {
  readonly recorded: readonly object[] | null;
  readonly says: string;
  readonly asks: string | null;
  readonly problems: readonly string[];
}

export interface Reply {
  readonly tokens: readonly Token[];
  readonly json: JsonAnswer;
  readonly record: RecordReply | null;
  readonly exit: number;
  readonly memory: Memory;
}
