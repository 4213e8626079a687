/** The chat itself: transcript above, prompt below, one turn after the other. */
import { useApp } from 'ink';
import { useEffect, useReducer } from 'react';
import type { Token } from '../say/tokens.ts';
import { beginWith, follow, type Turn } from './conversation.ts';
import type { Complete } from './prompt/completing.ts';
import { Prompt } from './prompt/prompt.tsx';
import { usePrompt } from './prompt/use-prompt.ts';
import { Transcript } from './transcript.tsx';
import { useRedrawing } from './use-redrawing.ts';
import { useTurns } from './use-turns.ts';
import { useWindow } from './use-window.ts';
import { stillWorking } from './while-waiting.ts';

export interface ChatProps {
  readonly opening: readonly Token[];
  /** Lines sent on earlier days, oldest first. */
  readonly history: readonly string[];
  readonly turn: Turn;
  readonly takesEmpty?: (() => boolean) | undefined;
  readonly ways: Complete;
  readonly color: boolean;
  readonly isAscii: boolean;
  /** Whether the terminal breaks rows that became too long for it. */
  readonly breaks: boolean;
}

/** Draws the conversation and ends the Ink app when it is over. */
export const Chat = ({ opening, history, turn, takesEmpty, ways, color, isAscii, breaks }: ChatProps) => {
  const { exit } = useApp();
  const window = useWindow();
  const width = window.columns;
  const [conversation, tell] = useReducer(follow, { opening, width }, beginWith);
  const take = useTurns(turn, tell, exit);
  const submit = (words: string): void => {
    if (words !== '' || takesEmpty?.() === true) take(words);
  };
  const editor = usePrompt(history, ways, submit, () => tell({ t: 'left' }));
  useEffect(() => {
    if (conversation.over) exit();
  }, [conversation.over, exit]);
  useEffect(() => tell({ t: 'resized', width }), [width]);
  useRedrawing(conversation, window, { breaks, isAscii }, tell);
  const busy = conversation.slow === null ? null : stillWorking(conversation.slow);
  return (
    <>
      <Transcript lines={conversation.lines} width={width} color={color} isAscii={isAscii} />
      {conversation.over ? null : (
        <Prompt editor={editor} window={window} color={color} isAscii={isAscii} busy={busy} />
      )}
    </>
  );
};
