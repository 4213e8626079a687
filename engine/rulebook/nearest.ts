/** The known word that a misspelt one was meant to be. */
import { closest, distance } from 'fastest-levenshtein';

/** The known word nearest to a misspelt one, or nothing when none is near. */
export const nearest = (word: string, known: readonly string[]): string | undefined => {
  if (known.length === 0) return undefined;
  const best = closest(word, known as string[]);
  return distance(word, best) <= Math.max(2, word.length / 3) ? best : undefined;
};
