/** Tone to colour. Colour only repeats what a word has said, so nothing is lost without it. */
import type { Tone } from '../say/tokens.ts';

/** Properties for Ink's Text; empty when the keeper wants no colour. */
export interface Tint {
  readonly color?: string;
  readonly dimColor?: boolean;
}

const tints: Readonly<Record<Tone, Tint>> = {
  plain: {},
  aside: { dimColor: true },
  held: { color: 'cyan' },
  failed: { color: 'magenta' },
  'not known': { color: 'yellow' },
  careful: { color: 'yellow' },
};

/** How a tone is tinted; `color` is false under NO_COLOR. */
export const tintOf = (tone: Tone, color: boolean): Tint => (color ? tints[tone] : {});
