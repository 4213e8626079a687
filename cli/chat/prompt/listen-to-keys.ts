/** Turns a terminal's input stream into acts, and puts the terminal back as it was. */
import { decodeKeys, nothingDecoded } from './decode-keys.ts';
import type { Act } from './prompt-state.ts';

const bracketedPasteOn = '\x1b[?2004h';
const bracketedPasteOff = '\x1b[?2004l';

/**
 * Reads keys one by one (raw mode, bracketed paste) and hands on the acts of each chunk, `hang-up` when the stream ends.
 * The function given back stops it: the terminal is cooked again and the stream no longer keeps the process alive.
 */
export const listenToKeys = (
  stdin: NodeJS.ReadStream,
  stdout: NodeJS.WriteStream,
  onActs: (acts: readonly Act[]) => void,
): (() => void) => {
  let decoding = nothingDecoded;
  const take = (chunk: string): void => {
    const { acts, after } = decodeKeys(chunk, decoding);
    decoding = after;
    if (acts.length > 0) onActs(acts);
  };
  const hangUp = (): void => onActs([{ t: 'hang-up' }]);
  stdin.setEncoding('utf8');
  stdin.setRawMode(true);
  stdout.write(bracketedPasteOn);
  stdin.on('data', take);
  stdin.on('end', hangUp);
  stdin.resume();
  return () => {
    stdin.off('data', take);
    stdin.off('end', hangUp);
    stdin.pause();
    stdin.setRawMode(false);
    stdout.write(bracketedPasteOff);
  };
};
