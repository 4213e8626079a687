/**
 * The chat line by line, for screen readers and for terminals that only write: nothing is drawn over, each line appears
 * once, and the terminal's own line editing is left to do the typing.
 */
import { createInterface } from 'node:readline';
import type { Token } from '../say/tokens.ts';
import type { Turn } from './conversation.ts';
import { stillWorking, whileWaiting } from './while-waiting.ts';

export interface LineDoors {
  readonly stdin: NodeJS.ReadableStream;
  readonly stdout: NodeJS.WritableStream;
  /** Tokens as the lines to write. */
  readonly show: (tokens: readonly Token[]) => readonly string[];
  readonly opening: readonly Token[];
  readonly turn: Turn;
  readonly takesEmpty?: (() => boolean) | undefined;
}

const prompt = 'say: ';

/** Chats until the keeper leaves or the input ends. Rejects only when `turn` does. */
export const chatInLines = async (doors: LineDoors): Promise<void> => {
  const { stdin, stdout, show, opening, turn, takesEmpty } = doors;
  const write = (tokens: readonly Token[]): void => {
    for (const line of show(tokens)) stdout.write(`${line}\n`);
  };
  // Without its own drawing: it would go back over the line at every key.
  const lines = createInterface({ input: stdin, terminal: false });
  write(opening);
  stdout.write(prompt);
  try {
    for await (const line of lines) {
      const words = line.trim();
      if (words !== '' || takesEmpty?.() === true) {
        const { tokens, leave = false } = await whileWaiting(
          () => {
            write([{ t: 'detail', text: stillWorking(words) }]);
            return () => undefined;
          },
          () => turn(words),
        );
        write(tokens);
        if (leave) return;
      }
      stdout.write(prompt);
    }
    // The end of the input left the prompt's row open.
    stdout.write('\n');
  } finally {
    lines.close();
  }
};
