/** The chat itself: transcript above, prompt below, one turn after the other. */
import { useApp } from 'ink';
import { useEffect, useReducer } from 'react';
import type { Token } from '../say/tokens.ts';
import { beginWith, follow, type Turn } from './conversation.ts';
import { Prompt } from './prompt/prompt.tsx';
import { usePrompt } from './prompt/use-prompt.ts';
import { Transcript } from './transcript.tsx';
import { useColumns } from './use-columns.ts';
import { useTurns } from './use-turns.ts';

export interface ChatProps {
  readonly opening: readonly Token[];
  /** Lines sent on earlier days, oldest first. */
  readonly history: readonly string[];
  readonly turn: Turn;
  readonly takesEmpty?: (() => boolean) | undefined;
  readonly color: boolean;
}

/** Draws the conversation and ends the Ink app when it is over. */
export const Chat = ({ opening, history, turn, takesEmpty, color }: ChatProps) => {
  const { exit } = useApp();
  const width = useColumns();
  const [conversation, tell] = useReducer(follow, opening, beginWith);
  const take = useTurns(turn, tell, exit);
  const takeEmpty = (): void => {
    if (takesEmpty?.() === true) take('');
  };
  const editor = usePrompt(history, take, takeEmpty, () => tell({ t: 'left' }));
  useEffect(() => {
    if (conversation.over) exit();
  }, [conversation.over, exit]);
  return (
    <>
      <Transcript lines={conversation.lines} width={width} color={color} />
      {conversation.over ? null : <Prompt editor={editor} width={width} color={color} />}
    </>
  );
};
