/** Starts the real chat in a fake terminal and waits for its prompt. */
import { type ChatDoors, startChat } from '../../cli/chat/start.tsx';
import { makeEchoTurn } from './echo-turn.ts';
import { type FakeTerminal, openTerminal } from './fake-terminal.ts';

export interface Started {
  readonly terminal: FakeTerminal;
  /** All lines that reached the turn. */
  readonly heard: readonly string[];
  /** Settles when the chat has ended. */
  readonly ended: Promise<void>;
}

/** A chat with the echo turn, no colour and no history unless said otherwise. */
export const startIn = async (
  terminal: FakeTerminal = openTerminal(),
  doors: Partial<ChatDoors> = {},
): Promise<Started> => {
  const { turn, heard } = makeEchoTurn();
  const ended = startChat({
    stdin: terminal.stdin,
    stdout: terminal.stdout,
    env: process.env,
    color: false,
    way: 'drawn',
    isAscii: false,
    ways: () => [],
    opening: [],
    history: [],
    turn,
    ...doors,
  });
  await terminal.shows('say:');
  return { terminal, heard, ended };
};
