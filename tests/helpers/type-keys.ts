/** Keys as a terminal sends them, one chunk a key. */
import type { FakeTerminal } from './fake-terminal.ts';

export const key = {
  enter: '\r',
  left: '\x1b[D',
  right: '\x1b[C',
  up: '\x1b[A',
  down: '\x1b[B',
  home: '\x1b[H',
  end: '\x1b[F',
  backspace: '\x7f',
  delete: '\x1b[3~',
  altB: '\x1bb',
  ctrlLeft: '\x1b[1;5D',
  tab: '\t',
  esc: '\x1b',
  ctrlA: '\x01',
  ctrlC: '\x03',
  ctrlD: '\x04',
  ctrlK: '\x0b',
  ctrlR: '\x12',
  ctrlU: '\x15',
  ctrlW: '\x17',
} as const;

/** A text as a terminal with bracketed paste sends it. */
export const pasted = (text: string): string => `\x1b[200~${text}\x1b[201~`;

/** Types each text letter by letter; a key of `key` or a paste goes as one chunk. */
export const typeKeys = (terminal: FakeTerminal, ...texts: readonly string[]): void => {
  for (const text of texts) {
    const isOneKey = /^[\x00-\x1f\x7f]/.test(text);
    for (const chunk of isOneKey ? [text] : text) terminal.send(chunk);
  }
};
