/** What stands in the transcript: the keeper's lines and what was told, in order; and how a line is answered. Pure. */
import type { Token } from '../say/tokens.ts';

export type Line =
  | { readonly t: 'said'; readonly id: number; readonly words: string }
  | { readonly t: 'told'; readonly id: number; readonly tokens: readonly Token[] };

export interface Conversation {
  readonly lines: readonly Line[];
  /** The keeper is done; the prompt is taken away and the chat ends. */
  readonly over: boolean;
}

export type Event =
  | { readonly t: 'said'; readonly words: string }
  | { readonly t: 'told'; readonly tokens: readonly Token[]; readonly leaves: boolean }
  | { readonly t: 'left' };

/** What comes back for the keeper's words. */
export interface Told {
  readonly tokens: readonly Token[];
  /** True when the keeper asked to end the chat. */
  readonly leave?: boolean;
}

/** Answers one line; what `why` or a bare number refers to is remembered behind it. */
export type Turn = (words: string) => Promise<Told>;

/** A conversation in which only the opening has been said. */
export const beginWith = (opening: readonly Token[]): Conversation => ({
  lines: opening.length === 0 ? [] : [{ t: 'told', id: 0, tokens: opening }],
  over: false,
});

/** The conversation after an event. */
export const follow = (conversation: Conversation, event: Event): Conversation => {
  const id = conversation.lines.length;
  const add = (line: Line, over: boolean): Conversation => ({ lines: [...conversation.lines, line], over });
  switch (event.t) {
    case 'said':
      return add({ t: 'said', id, words: event.words }, conversation.over);
    case 'told':
      return add({ t: 'told', id, tokens: event.tokens }, event.leaves || conversation.over);
    case 'left':
      return { ...conversation, over: true };
  }
};
