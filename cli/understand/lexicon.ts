/** The rulebook as understanding uses it: topics with their ideas, all phrases in one index, and the learned weights. */
import type { Rulebook, Unit } from '../../engine/types.ts';
import { featuresOf } from './features.ts';
import { findAll, type Grounds } from './find/all.ts';
import { nameBirds } from './find/group.ts';
import { unitWords } from './find/quantity.ts';
import { type Likeness, learnLikeness } from './likeness.ts';
import { indexPhrases, type Phrase, type PhraseIndex } from './phrase-index.ts';
import type { TermSpan } from './spans.ts';
import { mendSlips } from './spelling.ts';
import { stemOf } from './stem.ts';
import { type Token, tokenise } from './tokens.ts';

/** Something that a line can be about. `about` topics concern the talk itself and have no form of their own. */
export interface Topic {
  readonly id: string;
  readonly family: 'ask' | 'tell' | 'about';
  readonly offer: string;
  readonly ideas: Readonly<Record<string, number>>;
}

export interface Lexicon {
  readonly topics: readonly Topic[];
  readonly index: PhraseIndex;
  readonly units: ReadonlyMap<string, Unit>;
  readonly likeness: Likeness;
  /** Ideas that some question, or some record, is about; the others speak for being outside. */
  readonly claimed: Readonly<Record<Topic['family'], ReadonlySet<string>>>;
  /** Every word it knows, for telling slips from words. */
  readonly vocabulary: ReadonlySet<string>;
  readonly stems: ReadonlySet<string>;
  readonly classOf: (span: TermSpan) => string | null;
}

interface Taught {
  readonly phrasings: readonly string[];
  readonly not: readonly string[];
  readonly topic: Topic;
}

const taughtTopics = (book: Rulebook): readonly Taught[] => [
  ...Object.values(book.questions).map(
    (question): Taught => ({
      phrasings: [question.example, ...question.phrasings],
      not: question.not,
      topic: {
        id: question.id,
        family: question.kind === 'about' ? 'about' : 'ask',
        offer: question.offer,
        ideas: question.ideas,
      },
    }),
  ),
  ...Object.values(book.records)
    .filter((record) => book.questions[record.kind] === undefined)
    .map(
      (record): Taught => ({
        phrasings: [record.example, ...record.phrasings],
        not: record.not,
        topic: { id: `tell:${record.kind}`, family: 'tell', offer: record.offer, ideas: record.ideas },
      }),
    ),
];

const allPhrases = (book: Rulebook): readonly { words: string; list: TermSpan['list']; id: string }[] => {
  const { ideas, causes, signs, settings } = book.words;
  const listed = (list: TermSpan['list'], entries: readonly (readonly [string, readonly string[]])[]) =>
    entries.flatMap(([id, words]) => words.map((each) => ({ words: each, list, id })));
  return [
    ...listed('idea', Object.entries(ideas)),
    ...listed(
      'cause',
      Object.entries(causes).map(([id, cause]) => [id, cause.words] as const),
    ),
    ...listed(
      'sign',
      Object.entries(signs).map(([id, sign]) => [id, sign.words] as const),
    ),
    ...listed(
      'setting',
      Object.entries(settings).map(([id, setting]) => [id, setting.words] as const),
    ),
  ];
};

/** Ideas that some topic of a family is about. `about` topics speak of whatever was asked or told before. */
const claimedBy = (topics: readonly Topic[], family: Topic['family']): ReadonlySet<string> =>
  new Set(
    topics
      .filter((topic) => topic.family === family || topic.family === 'about' || family === 'about')
      .flatMap((topic) => Object.keys(topic.ideas).filter((idea) => (topic.ideas[idea] ?? 0) > 0)),
  );

const classIn =
  (book: Rulebook) =>
  (span: TermSpan): string | null =>
    span.list === 'cause'
      ? (book.words.causes[span.id]?.class ?? null)
      : span.list === 'sign'
        ? (book.words.signs[span.id]?.class ?? null)
        : null;

/** What is worked out from all phrasings. Plain JSON, so that a build can work it out once and ship it. */
export interface Learned {
  /** Phrases by their first stem. */
  readonly index: readonly (readonly [string, readonly Phrase[]])[];
  readonly likeness: Likeness;
  readonly vocabulary: readonly string[];
}

/** Reads all phrasings of a rulebook; the costly part of making a lexicon, some hundred milliseconds. */
export const learn = (book: Rulebook): Learned => {
  const taught = taughtTopics(book);
  const phrases = allPhrases(book);
  const index = indexPhrases(phrases);
  const units = unitWords(book.units);
  const namings = nameBirds([], book.words.kinds);
  const grounds: Grounds = { today: '2000-01-01', system: 'us', groups: [], namings, units, index };
  const read = (words: string): readonly string[] =>
    featuresOf(findAll(tokenise(words), grounds), classIn(book)).map((each) => each.id);
  const known = [
    ...phrases.map((each) => each.words),
    ...taught.flatMap((each) => each.phrasings),
    ...units.keys(),
    ...Object.values(book.words.kinds).flat(),
  ];
  const lessons = taught.map((each) => ({
    topic: each.topic.id,
    phrasings: each.phrasings.map(read),
    not: each.not.map(read),
  }));
  return {
    index: [...index],
    likeness: learnLikeness(lessons),
    vocabulary: [...new Set(known.flatMap((words) => tokenise(words).map((token) => token.word)))],
  };
};

/** Makes the lexicon of a rulebook. `learned` has to come from the same rulebook. */
export const makeLexicon = (book: Rulebook, learned: Learned = learn(book)): Lexicon => {
  const topics = taughtTopics(book).map((each) => each.topic);
  return {
    topics,
    index: new Map(learned.index),
    units: unitWords(book.units),
    likeness: learned.likeness,
    claimed: {
      ask: claimedBy(topics, 'ask'),
      tell: claimedBy(topics, 'tell'),
      about: claimedBy(topics, 'about'),
    },
    vocabulary: new Set(learned.vocabulary),
    stems: new Set(learned.vocabulary.map(stemOf)),
    classOf: classIn(book),
  };
};

/** The tokens of a line, slips mended where a word of the lexicon, or the name of a group, is plainly meant. */
export const readTokens = (words: string, lexicon: Lexicon, names: readonly string[]): readonly Token[] =>
  mendSlips(tokenise(words), { words: lexicon.vocabulary, stems: lexicon.stems, names });
