/** Where the words and phrases of the rulebook stand in a line; small words between them do not matter. */
import type { TermSpan } from './spans.ts';
import { stemOf } from './stem.ts';
import { type Token, tokenise } from './tokens.ts';

/** A phrase by the stems of its words, and what it stands for. */
export interface Phrase {
  readonly stems: readonly string[];
  readonly list: TermSpan['list'];
  readonly id: string;
}

/** Phrases by their first stem. */
export type PhraseIndex = ReadonlyMap<string, readonly Phrase[]>;

const small = new Set(
  'the a an my our your their his her its those these this that all just still now again them it both really actually maybe of some any one ones more then be is are us me have has been got getting back of up i we you they'.split(
    ' ',
  ),
);

/** Small words that may stand between two words of a phrase. */
const mostBetween = 2;

/** Makes an index of phrases. */
export const indexPhrases = (
  phrases: readonly { words: string; list: TermSpan['list']; id: string }[],
): PhraseIndex => {
  const index = new Map<string, Phrase[]>();
  for (const { words, list, id } of phrases) {
    const stems = tokenise(words)
      .filter((token) => !token.isMark)
      .map((token) => token.stem);
    const first = stems[0];
    if (first === undefined) continue;
    const same = index.get(first) ?? [];
    same.push({ stems, list, id });
    index.set(first, same);
  }
  return index;
};

/** The end of a phrase that begins at a token, or null. */
const endOf = (
  phrase: Phrase,
  tokens: readonly Token[],
  at: number,
  isName: (at: number) => boolean,
): number | null => {
  let place = at;
  for (const [n, stem] of phrase.stems.entries()) {
    let between = 0;
    while (tokens[place]?.stem !== stem) {
      const token = tokens[place];
      const skips = token !== undefined && !token.isMark && (small.has(token.word) || isName(place));
      if (n === 0 || !skips || between === mostBetween) return null;
      between += 1;
      place += 1;
    }
    place += 1;
  }
  return place;
};

/** All phrases that stand in a line. `isName` tells which tokens name birds, and so may stand between (`put the whites out`). */
export const findTerms = (
  index: PhraseIndex,
  tokens: readonly Token[],
  isName: (at: number) => boolean,
): readonly TermSpan[] =>
  tokens.flatMap((token, at) =>
    (index.get(token.stem) ?? []).flatMap((phrase): TermSpan[] => {
      const to = endOf(phrase, tokens, at, isName);
      return to === null ? [] : [{ kind: 'term', from: at, to, list: phrase.list, id: phrase.id }];
    }),
  );

/** Whether a word may stand between the words of a phrase. */
export const isSmall = (word: string): boolean => small.has(word) || small.has(stemOf(word));
