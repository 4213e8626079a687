/** Tone to colour. Colour only repeats what a word has said, so nothing is lost without it. */
import type { Tone } from '../say/tokens.ts';

/** Properties for Ink's Text; empty when the keeper wants no colour. */
export interface Tint {
  readonly color?: string;
  readonly bold?: boolean;
}

/**
 * Out of the fixed 240 of a terminal with 256 colours, since the first sixteen are each theme's own: middling in
 * brightness, so that they stand out from a white and a black ground alike. `tests/cli/chat/colours.test.ts` measures it.
 */
const [green, pink, brown] = ['ansi256(29)', 'ansi256(162)', 'ansi256(130)'];

const tints: Readonly<Record<Tone, Tint>> = {
  plain: {},
  // These are whole rows: they keep the theme's own colour, as no other can be read with ease on every ground there is.
  aside: {},
  held: { color: green },
  failed: { color: pink },
  'not known': { color: brown },
  careful: { bold: true },
};

/** How a tone is tinted; `color` is false where none is wanted, or where the terminal has no such colours. */
export const tintOf = (tone: Tone, color: boolean): Tint => (color ? tints[tone] : {});
