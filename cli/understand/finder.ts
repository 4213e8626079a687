/** Finding in lines over one place and one lexicon: the same tokens, slips mended, and finds for whoever reads them. */
import { findAll, type Grounds, type Line } from './find/all.ts';
import { nameBirds } from './find/group.ts';
import { type Lexicon, readTokens } from './lexicon.ts';
import type { About } from './types.ts';

/** What finding needs to know of a place. */
export const groundsOf = (
  about: Pick<About, 'today' | 'system' | 'groups' | 'book'>,
  lexicon: Lexicon,
): Grounds => ({
  today: about.today,
  system: about.system,
  groups: about.groups,
  namings: nameBirds(about.groups, about.book.words.kinds),
  units: lexicon.units,
  index: lexicon.index,
});

/** A function from words to a line with all that is found in it. */
export const finderFor = (about: About, lexicon: Lexicon): ((words: string) => Line) => {
  const grounds = groundsOf(about, lexicon);
  const names = about.groups.flatMap((group) => group.name.toLowerCase().split(/\s+/));
  return (words) => findAll(readTokens(words, lexicon, names), grounds);
};
