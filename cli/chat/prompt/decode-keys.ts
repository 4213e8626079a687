/**
 * What a terminal sends, as acts. Written here rather than taken from Ink's useInput, which in 6.8 throws on Ctrl-F1 and
 * on some cursor reports, cannot tell Delete from Backspace, and hands over `words + Enter` as one unsplit text.
 */
import { keyTable } from './key-table.ts';
import type { Act } from './prompt-state.ts';

/** What must be remembered between two chunks. */
export interface Decoding {
  /** Inside a bracketed paste. */
  readonly pasting: boolean;
  /** The beginning of an escape sequence that the last chunk did not finish. */
  readonly rest: string;
}

export const nothingDecoded: Decoding = { pasting: false, rest: '' };

const pasteStart = '\x1b[200~';
const pasteEnd = '\x1b[201~';

const pieces = new RegExp(
  [
    String.raw`\x1b\[M[\s\S]{3}`, // a mouse report in the old coding
    String.raw`\x1b[\]P_^][^\x07\x1b]*(?:\x07|\x1b\\)`, // a report about colours or the like
    String.raw`\x1b\x1b?\[\[?[0-?]*[ -/]*[@-~]`, // most keys and reports: a control sequence of ECMA-48
    String.raw`\x1b\x1b?O[@-~]`, // arrows in keypad mode
    String.raw`\x1b[^\x1b]`, // Alt with a character
    String.raw`[\r\n]+`,
    String.raw`[\x00-\x1f\x7f]`,
    String.raw`[^\x00-\x1f\x7f]+`, // text
  ].join('|'),
  'gu',
);
/** A lone Esc is the key itself and no beginning. */
const unfinished = /\x1b\x1b?(?:\[\[?[0-?]*[ -/]*|O)$/;
const lineEnds = /[\r\n]+$/;

/** Text of neighbouring pieces becomes one act: a long paste is cut into graphemes once, not once a line. */
const addText = (acts: readonly Act[], text: string): readonly Act[] => {
  const last = acts.at(-1);
  return last?.t === 'insert'
    ? [...acts.slice(0, -1), { t: 'insert', text: last.text + text }]
    : [...acts, { t: 'insert', text }];
};

const isText = (piece: string): boolean => !/^[\x00-\x1f\x7f]/.test(piece);
const isGap = (piece: string): boolean => /^[\r\n\t]/.test(piece);

/**
 * The acts in one chunk of input. A chunk that ends in a line end submits, and line ends inside it become spaces, so that
 * `words + Enter` sent at once is an Enter and two pasted lines are one line. A bracketed paste never submits by itself:
 * the keeper sees first what a record would say.
 */
export const decodeKeys = (
  chunk: string,
  before: Decoding,
): { readonly acts: readonly Act[]; readonly after: Decoding } => {
  const whole = before.rest + chunk;
  const rest = unfinished.exec(whole)?.[0] ?? '';
  const sent = whole.slice(0, whole.length - rest.length);
  const body = sent.replace(lineEnds, '');
  // Esc or Ctrl-C alone ends a paste whose end mark was lost; otherwise no key would ever work again.
  let pasting = before.pasting && sent !== '\x1b' && sent !== '\x03';
  let acts: readonly Act[] = [];
  const all = body.match(pieces) ?? [];
  // Keys typed fast come in one chunk, so a Tab at its end is the key; between words it was pasted.
  for (const [at, piece] of all.entries()) {
    const act = keyTable.get(piece);
    if (piece === pasteStart || piece === pasteEnd) pasting = piece === pasteStart;
    else if (isText(piece)) acts = addText(acts, piece);
    else if (isGap(piece) && (pasting || piece !== '\t' || at < all.length - 1)) acts = addText(acts, ' ');
    else if (act !== undefined && !pasting) acts = [...acts, act];
  }
  if (body !== sent) acts = pasting ? addText(acts, ' ') : [...acts, { t: 'submit' }];
  return { acts, after: { pasting, rest } };
};
