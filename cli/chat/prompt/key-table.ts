/** Which act each key sequence stands for, over the ways in which terminals send the same key. */
import type { Reach } from './line-edits.ts';
import type { Act } from './prompt-state.ts';

const move = (to: Reach): Act => ({ t: 'move', to });
const erase = (to: Reach): Act => ({ t: 'delete', to });

/** CSI modifier 2 is Shift, 3 is Alt, 5 is Ctrl; `ESC O` is the keypad mode; a doubled ESC is Alt on older terminals. */
const sequences: readonly (readonly [Act, ...(readonly string[])])[] = [
  [{ t: 'interrupt' }, '\x03'],
  [{ t: 'finish' }, '\x04'],
  [{ t: 'complete', to: 'next' }, '\t'],
  [{ t: 'complete', to: 'before' }, '\x1b[Z'],
  [{ t: 'search' }, '\x12'],
  [{ t: 'let-be' }, '\x1b', '\x07'],
  [{ t: 'recall', to: 'older' }, '\x10', '\x1b[A', '\x1bOA'],
  [{ t: 'recall', to: 'newer' }, '\x0e', '\x1b[B', '\x1bOB'],
  [move('left'), '\x02', '\x1b[D', '\x1bOD', '\x1b[1;2D'],
  [move('right'), '\x06', '\x1b[C', '\x1bOC', '\x1b[1;2C'],
  [move('word-left'), '\x1bb', '\x1b[1;3D', '\x1b[1;5D', '\x1b\x1b[D', '\x1b\x1bOD', '\x1bOd', '\x1b[5D'],
  [move('word-right'), '\x1bf', '\x1b[1;3C', '\x1b[1;5C', '\x1b\x1b[C', '\x1b\x1bOC', '\x1bOc', '\x1b[5C'],
  [move('start'), '\x01', '\x1b[H', '\x1bOH', '\x1b[1~', '\x1b[7~'],
  [move('end'), '\x05', '\x1b[F', '\x1bOF', '\x1b[4~', '\x1b[8~'],
  [erase('left'), '\x7f', '\x08'],
  [erase('right'), '\x1b[3~'],
  [erase('word-left'), '\x17', '\x1b\x7f', '\x1b\x08'],
  [erase('word-right'), '\x1bd', '\x1b[3;3~', '\x1b[3;5~'],
  [erase('start'), '\x15'],
  [erase('end'), '\x0b'],
];

/** The act of a key sequence; sequences that are absent have no meaning here. */
export const keyTable: ReadonlyMap<string, Act> = new Map(
  sequences.flatMap(([act, ...sent]) => sent.map((sequence) => [sequence, act] as const)),
);
