/** Lines heard on the place of the labelled files. */
import type { About, Heard } from '../../cli/understand/types.ts';
import { understand } from '../../cli/understand/understand.ts';
import { placeFor } from '../understanding/place.ts';
import { lexiconFor } from './learned.ts';
import { readRules } from './read-rules.ts';

/** Makes a listener with one lexicon for all its lines. */
export const listener = (): { about: About; hear: (words: string, more?: Partial<About>) => Heard } => {
  const about = placeFor(readRules());
  const lexicon = lexiconFor(about.book);
  return { about, hear: (words, more = {}) => understand(words, { ...about, ...more }, lexicon) };
};
