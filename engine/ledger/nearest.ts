/** The known name that a misspelt one was most likely meant to be. */
import { distance } from 'fastest-levenshtein';

// A slip of the finger changes one letter in a short word and two in a longer one; more than that is another word.
const slipsIn = (word: string): number => (word.length < 5 ? 1 : 2);

/** The name closest to `word`, or null when none is near enough to be worth offering. Case counts for nothing. */
export const nearestOf = (word: string, names: readonly string[]): string | null => {
  const typed = word.toLowerCase();
  let best: string | null = null;
  let least = slipsIn(typed) + 1;
  for (const name of names) {
    // the distance is at least the difference in length, which keeps a line of a million letters cheap
    if (Math.abs(name.length - typed.length) >= least) continue;
    const away = distance(typed, name.toLowerCase());
    if (away < least) [best, least] = [name, away];
  }
  return best;
};

/** The nearest name as data of a finding; nothing when there is none. */
export const suggestFrom = (word: string, names: readonly string[]): { readonly suggestion?: string } => {
  const suggestion = nearestOf(word, names);
  return suggestion === null ? {} : { suggestion };
};
