/** Takes the keeper's lines one after the other, so that answers stand in the order in which they were asked. */
import { useRef } from 'react';
import type { Event, Turn } from './conversation.ts';
import { slow } from './while-waiting.ts';

/**
 * A function that queues a line: it is shown, answered, and the answer shown, before the next one is begun. Nothing is
 * begun after a turn that leaves. A turn that throws is our own bug: the chat ends and the error is handed on.
 */
export const useTurns = (
  turn: Turn,
  tell: (event: Event) => void,
  fail: (error: Error) => void,
): ((words: string) => void) => {
  const last = useRef<Promise<boolean>>(Promise.resolve(false));
  const take = async (words: string): Promise<boolean> => {
    tell({ t: 'said', words });
    const late = setTimeout(() => tell({ t: 'slow', words }), slow);
    try {
      const { tokens, leave = false } = await turn(words);
      tell({ t: 'told', tokens, leaves: leave });
      return leave;
    } finally {
      clearTimeout(late);
    }
  };
  return (words) => {
    last.current = last.current
      .then((left) => left || take(words))
      .catch((error: unknown) => {
        fail(error instanceof Error ? error : new Error(String(error)));
        return true;
      });
  };
};
