/** The rulebook as understanding uses it: topics with their ideas, all phrases in one index, and the learned weights. */
import type { Rulebook, Unit } from '../../engine/types.ts';
import { featuresOf } from './features.ts';
import { findAll, type Grounds } from './find/all.ts';
import { unitWords } from './find/quantity.ts';
import { type Likeness, learnLikeness } from './likeness.ts';
import { indexPhrases, type PhraseIndex } from './phrase-index.ts';
import type { TermSpan } from './spans.ts';
import { mendSlips } from './spelling.ts';
import { tokenise } from './tokens.ts';

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

const claimedBy = (topics: readonly Topic[], family: Topic['family']): ReadonlySet<string> =>
  new Set(
    topics
      .filter((topic) => topic.family === family || (family !== 'about' && topic.family === 'about'))
      .flatMap((topic) => Object.keys(topic.ideas).filter((idea) => (topic.ideas[idea] ?? 0) > 0)),
  );

/** Makes the lexicon of a rulebook; costs some milliseconds, so make it once and hand it on. */
export const makeLexicon = (book: Rulebook): Lexicon => {
  const taught = taughtTopics(book);
  const topics = taught.map((each) => each.topic);
  const phrases = allPhrases(book);
  const index = indexPhrases(phrases);
  const units = unitWords(book.units);
  const classOf = (span: TermSpan): string | null =>
    span.list === 'cause'
      ? (book.words.causes[span.id]?.class ?? null)
      : span.list === 'sign'
        ? (book.words.signs[span.id]?.class ?? null)
        : null;
  const grounds: Grounds = {
    today: '2000-01-01',
    system: 'us',
    groups: [],
    kinds: book.words.kinds,
    units,
    index,
  };
  const read = (words: string): readonly string[] =>
    featuresOf(findAll(tokenise(words), grounds), classOf).map((each) => each.id);
  const known = [
    ...phrases.map((each) => each.words),
    ...taught.flatMap((each) => each.phrasings),
    ...units.keys(),
    ...Object.values(book.words.kinds).flat(),
  ];
  return {
    topics,
    index,
    units,
    likeness: learnLikeness(
      taught.map((each) => ({
        topic: each.topic.id,
        phrasings: each.phrasings.map(read),
        not: each.not.map(read),
      })),
    ),
    claimed: {
      ask: claimedBy(topics, 'ask'),
      tell: claimedBy(topics, 'tell'),
      about: claimedBy(topics, 'about'),
    },
    vocabulary: new Set(known.flatMap((words) => tokenise(words).map((token) => token.word))),
    classOf,
  };
};

/** The tokens of a line, slips mended where a word of the lexicon is plainly meant. */
export const readTokens = (words: string, lexicon: Lexicon, names: readonly string[]) =>
  mendSlips(tokenise(words), new Set([...lexicon.vocabulary, ...names]));
