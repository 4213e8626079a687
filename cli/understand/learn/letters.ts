/** Runs of letters of a line: what words unlike any known one (slips, dialect, other endings) are still known by. */

import type { Feature } from '../features.ts';
import type { Line } from '../find/all.ts';

/** Lengths of the runs, in characters with the spaces between words; longer ones add size and no skill. */
const lengths = [3, 4];

interface Character {
  readonly letter: string;
  readonly token: number;
}

/** The runs of a line, each once, with the tokens under them. Numbers count as one letter, and so do names of birds. */
export const lettersOf = ({ tokens, spans }: Line): readonly Feature[] => {
  const isBirds = (at: number): boolean =>
    spans.some((span) => span.kind === 'group' && span.from <= at && at < span.to);
  const written = tokens.flatMap((token, at): Character[] => {
    const word = isBirds(at) ? '@' : /^[\d.,]+$/.test(token.word) ? '0' : token.word;
    return [...word, ' '].map((letter) => ({ letter, token: at }));
  });
  const all = [{ letter: ' ', token: 0 }, ...written];
  const found = new Map<string, Feature>();
  for (const length of lengths) {
    for (let at = 0; at + length <= all.length; at += 1) {
      const id = all
        .slice(at, at + length)
        .map((each) => each.letter)
        .join('');
      const from = all[at]?.token ?? 0;
      const to = (all[at + length - 1]?.token ?? from) + 1;
      if (!found.has(id)) found.set(id, { id, from, to });
    }
  }
  return [...found.values()];
};
