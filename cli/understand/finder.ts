/** Finding in lines over one place and one lexicon: the same tokens, slips mended, and finds for whoever reads them. */
import { findAll, type Grounds, type Line } from './find/all.ts';
import { nameBirds } from './find/group.ts';
import { type Lexicon, readTokens } from './lexicon.ts';
import { stemOf } from './stem.ts';
import type { Token } from './tokens.ts';
import type { About, KnownGroup } from './types.ts';

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

/** `2 W dead`: a capital letter by itself stands for the one group whose name begins with it. */
const readInitials = (
  words: string,
  tokens: readonly Token[],
  groups: readonly KnownGroup[],
): readonly Token[] => {
  const living = groups.filter(({ place }) => place !== 'gone');
  return tokens.map((token) => {
    const letter = words.slice(token.start, token.end);
    if (!/^[B-HJ-Z]$/.test(letter) || token.touches) return token;
    const [meant, second] = living.filter(({ name }) => name.toUpperCase().startsWith(letter));
    if (meant === undefined || second !== undefined || /\s/.test(meant.name)) return token;
    const word = meant.name.toLowerCase();
    return { ...token, word, stem: stemOf(word) };
  });
};

/** A function from words to a line with all that is found in it. */
export const finderFor = (about: About, lexicon: Lexicon): ((words: string) => Line) => {
  const grounds = groundsOf(about, lexicon);
  const names = about.groups.flatMap((group) => group.name.toLowerCase().split(/\s+/));
  return (words) => findAll(readInitials(words, readTokens(words, lexicon, names), about.groups), grounds);
};
