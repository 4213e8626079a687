/** The door to the chat: draws it, or has it line by line, until the keeper leaves, and gives the terminal back. */
import { toAscii } from '../say/ascii.ts';
import { plain } from '../say/plain.ts';
import { readOut } from '../say/read-out.ts';
import type { Token } from '../say/tokens.ts';
import type { ChatWay } from './chat-way.ts';
import type { Turn } from './conversation.ts';
import { foldLong } from './fold-long.ts';
import { chatInLines } from './in-lines.ts';
import { keepRowsBelow } from './keep-rows-below.ts';
import type { Complete } from './prompt/completing.ts';
import { breaksRows } from './redraw.ts';
import { sizeOf } from './window-size.ts';

/** Everything the chat needs from outside. */
export interface ChatDoors {
  readonly stdin: NodeJS.ReadStream;
  /** Its `columns` and `rows` are followed as the window is resized. */
  readonly stdout: NodeJS.WriteStream;
  /** The live environment of the process, not a copy: Ink reads it once, while it is loaded. */
  readonly env: NodeJS.ProcessEnv;
  /** What `chatWay` said of these streams. */
  readonly way: ChatWay;
  /** False under NO_COLOR, and where the terminal has too few. */
  readonly color: boolean;
  /** Whether nothing beyond ASCII may be shown. */
  readonly isAscii: boolean;
  /** What is said before the first line; may be empty. */
  readonly opening: readonly Token[];
  readonly turn: Turn;
  /** Whether an empty line says something now, as where it skips a question; it is taken for nothing when left out. */
  readonly takesEmpty?: (() => boolean) | undefined;
  /** Lines sent on earlier days, oldest first. */
  readonly history: readonly string[];
  /** What a line may go on with, for Tab. */
  readonly ways: Complete;
}

/** Ink draws no prompt when CI is set to anything at all, even to nothing; yet here a person sits at a terminal. */
const loadDrawing = async (env: NodeJS.ProcessEnv) => {
  const { CI, CONTINUOUS_INTEGRATION } = env;
  delete env.CI;
  delete env.CONTINUOUS_INTEGRATION;
  try {
    const [{ render }, { Chat }] = await Promise.all([import('ink'), import('./chat.tsx')]);
    return { render, Chat };
  } finally {
    if (CI !== undefined) env.CI = CI;
    if (CONTINUOUS_INTEGRATION !== undefined) env.CONTINUOUS_INTEGRATION = CONTINUOUS_INTEGRATION;
  }
};

const draw = async (doors: ChatDoors): Promise<void> => {
  const { stdin, stdout, env, way: _way, ...chat } = doors;
  const { render, Chat } = await loadDrawing(env);
  // Before the first drawing: a key typed the moment the prompt appears must not be echoed beside it.
  stdin.setRawMode(true);
  let end = (): void => undefined;
  try {
    const app = render(<Chat {...chat} breaks={breaksRows(env)} />, {
      stdin,
      stdout,
      exitOnCtrlC: false,
      patchConsole: false,
      // Ink's own way for screen readers writes the prompt anew at every key; ours, line by line, does not.
      isScreenReaderEnabled: false,
    });
    end = keepRowsBelow(stdout);
    await app.waitUntilExit();
  } finally {
    end();
    stdin.setRawMode(false);
  }
};

const heard = (tokens: readonly Token[]): readonly string[] =>
  tokens.map(readOut).filter((sentence) => sentence !== '');

/** Chats until the keeper leaves. Rejects only when `turn` does; the terminal is clean by then. */
export const startChat = (doors: ChatDoors): Promise<void> => {
  const { way, stdout, isAscii } = doors;
  const turn = foldLong(doors.turn, () => sizeOf(stdout), way === 'heard');
  if (way === 'drawn') return draw({ ...doors, turn });
  const lines = (tokens: readonly Token[]): readonly string[] =>
    way === 'heard' ? heard(tokens) : plain(tokens, sizeOf(stdout).columns);
  const show = (tokens: readonly Token[]) => (isAscii ? lines(tokens).map(toAscii) : lines(tokens));
  return chatInLines({ ...doors, turn, show });
};
