/** Draws the newest answer's pictures anew once the window has another width. */
import { useStdout } from 'ink';
import { useEffect, useEffectEvent } from 'react';
import { toAscii } from '../say/ascii.ts';
import type { Conversation, Event } from './conversation.ts';
import { eraseAbove, redrawing } from './redraw.ts';
import type { Window } from './window-size.ts';

/** How long a window must keep its width before a picture is drawn for it, in milliseconds: one being dragged passes many. */
const settled = 200;

/** Watches the window's width; what is drawn anew is told as an event, once what it replaces is taken away. */
export const useRedrawing = (
  conversation: Conversation,
  window: Window,
  { breaks, isAscii }: { readonly breaks: boolean; readonly isAscii: boolean },
  tell: (event: Event) => void,
): void => {
  const { stdout, write } = useStdout();
  const redraw = useEffectEvent(() => {
    const asShown = (text: string): string => (isAscii ? toAscii(text) : text);
    const anew = conversation.over ? null : redrawing(conversation, window, { breaks, asShown });
    if (anew === null) return;
    // Held back to be sent at once: nobody is to see the answer gone.
    stdout.cork();
    // Ink takes its prompt away, writes this, and draws the prompt again: what follows goes above it, as ever.
    if (anew.rows > 0) write(eraseAbove(anew.rows));
    tell({ t: 'redrawn', tokens: anew.tokens });
    setImmediate(() => stdout.uncork());
  });
  const { columns } = window;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each width anew, whatever was said meanwhile
  useEffect(() => {
    const later = setTimeout(redraw, settled);
    return () => clearTimeout(later);
  }, [columns]);
};
