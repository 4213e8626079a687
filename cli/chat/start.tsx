/** The door to the chat: loads Ink, draws until the keeper leaves, gives the terminal back. */
import type { Token } from '../say/tokens.ts';
import type { Turn } from './conversation.ts';

/** Everything the chat needs from outside. `canChat` must have said yes to these streams. */
export interface ChatDoors {
  readonly stdin: NodeJS.ReadStream;
  /** Its `columns` and `rows` are followed as the window is resized. */
  readonly stdout: NodeJS.WriteStream;
  /** The live environment of the process, not a copy: Ink reads it once, while it is loaded. */
  readonly env: NodeJS.ProcessEnv;
  /** False under NO_COLOR. */
  readonly color: boolean;
  readonly screenReader: boolean;
  /** What is said before the first line; may be empty. */
  readonly opening: readonly Token[];
  readonly turn: Turn;
  /** Whether an empty line says something now, as where it skips a question; it is taken for nothing when left out. */
  readonly takesEmpty?: (() => boolean) | undefined;
  /** Lines sent on earlier days, oldest first. */
  readonly history: readonly string[];
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

/** Chats until the keeper leaves. Rejects only when `turn` does; the terminal is clean by then. */
export const startChat = async (doors: ChatDoors): Promise<void> => {
  const { stdin, stdout, env, screenReader, ...chat } = doors;
  const { render, Chat } = await loadDrawing(env);
  // Before the first drawing: a key typed the moment the prompt appears must not be echoed beside it.
  stdin.setRawMode(true);
  try {
    const app = render(<Chat {...chat} />, {
      stdin,
      stdout,
      exitOnCtrlC: false,
      patchConsole: false,
      isScreenReaderEnabled: screenReader,
    });
    await app.waitUntilExit();
  } finally {
    stdin.setRawMode(false);
    // In screen-reader mode Ink ends on the prompt's own row.
    if (screenReader) stdout.write('\n');
  }
};
