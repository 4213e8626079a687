/** What stands in the transcript: the keeper's lines and what was told, in order; and how a line is answered. Pure. */
import type { Token } from '../say/tokens.ts';

export type Line =
  | { readonly t: 'said'; readonly id: number; readonly words: string }
  /** `width` is that of the window in which it is written, in columns. */
  | { readonly t: 'told'; readonly id: number; readonly tokens: readonly Token[]; readonly width: number };

export interface Conversation {
  readonly lines: readonly Line[];
  /** The keeper is done; the prompt is taken away and the chat ends. */
  readonly over: boolean;
  /** Columns of the window. */
  readonly width: number;
  /** The line being worked on for longer than a moment. */
  readonly slow: string | null;
}

export type Event =
  | { readonly t: 'said'; readonly words: string }
  | { readonly t: 'told'; readonly tokens: readonly Token[]; readonly leaves: boolean }
  | { readonly t: 'slow'; readonly words: string }
  | { readonly t: 'resized'; readonly width: number }
  /** The newest answer, or its pictures, drawn anew for the window as it is now. */
  | { readonly t: 'redrawn'; readonly tokens: readonly Token[] }
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
export const beginWith = ({
  opening,
  width,
}: {
  opening: readonly Token[];
  width: number;
}): Conversation => ({
  lines: opening.length === 0 ? [] : [{ t: 'told', id: 0, tokens: opening, width }],
  over: false,
  width,
  slow: null,
});

/** The conversation after an event. */
export const follow = (conversation: Conversation, event: Event): Conversation => {
  const id = conversation.lines.length;
  const { width } = conversation;
  const add = (line: Line, over: boolean): Conversation => ({
    ...conversation,
    lines: [...conversation.lines, line],
    over,
    slow: null,
  });
  switch (event.t) {
    case 'said':
      return add({ t: 'said', id, words: event.words }, conversation.over);
    case 'told':
      return add({ t: 'told', id, tokens: event.tokens, width }, event.leaves || conversation.over);
    case 'slow':
      return { ...conversation, slow: event.words };
    case 'resized':
      return event.width === width ? conversation : { ...conversation, width: event.width };
    case 'redrawn':
      return {
        ...conversation,
        lines: [...conversation.lines, { t: 'told', id, tokens: event.tokens, width }],
      };
    case 'left':
      return { ...conversation, over: true };
  }
};
