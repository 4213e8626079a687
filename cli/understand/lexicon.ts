/** The rulebook as understanding uses it: topics with their ideas, all phrases in one index, and the learned weights. */
import type { Rulebook, Unit } from '../../engine/types.ts';
import { unitWords } from './find/quantity.ts';
import type { Weights } from './learn/pack.ts';
import type { Phrase, PhraseIndex } from './phrase-index.ts';
import type { TermSpan } from './spans.ts';
import { mendSlips } from './spelling.ts';
import { stemOf } from './stem.ts';
import { type Token, tokenise } from './tokens.ts';

/** Something that a line can be about. `about` topics concern the talk itself and have no form of their own. */
export interface Topic {
  readonly id: string;
  readonly family: 'ask' | 'tell' | 'about';
  readonly offer: string;
}

export interface Lexicon {
  readonly topics: readonly Topic[];
  readonly index: PhraseIndex;
  readonly units: ReadonlyMap<string, Unit>;
  /** What each word and idea, and each run of letters, says for each topic. */
  readonly words: Weights;
  readonly letters: Weights;
  /** What the same say for each kind of change that a line may suppose. */
  readonly kindWords: Weights;
  readonly kindLetters: Weights;
  /** The wordings that the rule files themselves give, by their hash, with the topic that each is of. */
  readonly plain: ReadonlyMap<number, string>;
  /** Dangers that a line outside may speak of. */
  readonly hazards: readonly string[];
  /** Every word it knows, for telling slips from words. */
  readonly vocabulary: ReadonlySet<string>;
  readonly stems: ReadonlySet<string>;
  readonly classOf: (span: TermSpan) => string | null;
}

/** What is worked out from all phrasings and all labelled lines, so that a build can work it out once and ship it. */
export interface Learned {
  /** Phrases by their first stem. */
  readonly index: readonly (readonly [string, readonly Phrase[]])[];
  readonly vocabulary: readonly string[];
  /** Hashes of the wordings of the rule files, with their topics. */
  readonly plain: readonly (readonly [number, string])[];
  /** By stems, pairs of stems and ideas. */
  readonly words: Weights;
  /** By runs of letters. */
  readonly letters: Weights;
  /** What is supposed, by the same and by the topic. */
  readonly kindWords: Weights;
  readonly kindLetters: Weights;
}

/** Everything that a line can be about, in the order of the rule files. */
export const topicsOf = (book: Rulebook): readonly Topic[] => [
  ...Object.values(book.questions).map(
    (question): Topic => ({
      id: question.id,
      family: question.kind === 'about' ? 'about' : 'ask',
      offer: question.offer,
    }),
  ),
  ...Object.values(book.records)
    .filter((record) => book.questions[record.kind] === undefined)
    .map((record): Topic => ({ id: `tell:${record.kind}`, family: 'tell', offer: record.offer })),
];

/** The class of a cause or a sign, such as hunters or breathing. */
export const classIn =
  (book: Rulebook) =>
  (span: TermSpan): string | null =>
    span.list === 'cause'
      ? (book.words.causes[span.id]?.class ?? null)
      : span.list === 'sign'
        ? (book.words.signs[span.id]?.class ?? null)
        : null;

/** What slips are mended towards. The stems are only made for a line that has a word which is not known. */
export const slipsOf = (vocabulary: readonly string[]) => {
  let stems: ReadonlySet<string> | undefined;
  return {
    words: new Set(vocabulary),
    get stems(): ReadonlySet<string> {
      stems ??= new Set(vocabulary.map(stemOf));
      return stems;
    },
  };
};

/** Makes the lexicon of a rulebook from what was learned from the same rulebook. */
export const makeLexicon = (book: Rulebook, learned: Learned): Lexicon => {
  const slips = slipsOf(learned.vocabulary);
  return {
    topics: topicsOf(book),
    index: new Map(learned.index),
    units: unitWords(book.units),
    words: learned.words,
    letters: learned.letters,
    plain: new Map(learned.plain),
    kindWords: learned.kindWords,
    kindLetters: learned.kindLetters,
    hazards: Object.keys(book.words.hazards),
    vocabulary: slips.words,
    get stems() {
      return slips.stems;
    },
    classOf: classIn(book),
  };
};

/** The tokens of a line, slips mended where a word of the lexicon, or the name of a group, is plainly meant. */
export const readTokens = (words: string, lexicon: Lexicon, names: readonly string[]): readonly Token[] =>
  mendSlips(tokenise(words), {
    words: lexicon.vocabulary,
    get stems() {
      return lexicon.stems;
    },
    names,
  });
