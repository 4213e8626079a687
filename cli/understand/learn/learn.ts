/** Learning what the words of the trade speak for: from the phrasings of the rule files and from labelled lines. */
import type { Rulebook } from '../../../engine/types.ts';
import { wordingOf } from '../features.ts';
import { findAll, type Grounds, type Line } from '../find/all.ts';
import { nameBirds } from '../find/group.ts';
import { unitWords } from '../find/quantity.ts';
import { classIn, type Learned, slipsOf, topicsOf } from '../lexicon.ts';
import { indexPhrases } from '../phrase-index.ts';
import type { TermSpan } from '../spans.ts';
import { mendSlips } from '../spelling.ts';
import { tokenise } from '../tokens.ts';
import { type Cues, cuesOf, isValueCue, kindCuesOf } from './cues.ts';
import { hashOf, pack, type Weights } from './pack.ts';
import { hazardTopic, nothing, outside, type Spoken, sameAgain, spokenAt, wantedIn } from './spoken.ts';
import { type Training, train } from './train.ts';

interface Lesson {
  readonly words: string;
  readonly topics: readonly string[];
  /** Who said it; 0 is the rule files. */
  readonly voice: number;
}

/** The phrasings in the rule files, each with the topic that it asks or tells. */
const phrasingsOf = (book: Rulebook): readonly Lesson[] =>
  topicsOf(book).flatMap(({ id }) => {
    const part = book.questions[id] ?? book.records[id.slice('tell:'.length)];
    const { example = '', phrasings = [] } = part ?? {};
    return [example, ...phrasings].map((words) => ({ words, topics: [id], voice: 0 }));
  });

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

/** How the models are trained, and in how many voices a feature must be heard; set by leaving whole voices out. */
const training: Readonly<
  Record<Exclude<keyof Learned, 'index' | 'vocabulary' | 'plain'>, Training & { readonly voices: number }>
> = {
  words: { voices: 2, hidden: 64, rounds: 25, rate: 0.1, dropped: { features: 0.5, hidden: 0.3 } },
  letters: { voices: 3, hidden: 96, rounds: 15, rate: 0.07, dropped: { features: 0.5, hidden: 0.3 } },
  kindWords: { voices: 3, hidden: 32, rounds: 25, rate: 0.1, dropped: { features: 0.4, hidden: 0.3 } },
  kindLetters: { voices: 3, hidden: 32, rounds: 25, rate: 0.1, dropped: { features: 0.4, hidden: 0.3 } },
};

/** The words that slips are mended towards: those of the rule files, and any that three voices or more use. */
const fewestVoices = 3;
const vocabularyOf = (
  phrases: readonly string[],
  voices: readonly (readonly Spoken[])[],
): readonly string[] => {
  const wordsOf = (lines: readonly string[]): ReadonlySet<string> =>
    new Set(lines.flatMap((line) => tokenise(line).map((token) => token.word)));
  const counts = new Map<string, number>();
  for (const voice of voices) {
    for (const word of wordsOf(voice.map((each) => each.text))) counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  const common = [...counts].flatMap(([word, count]) => (count >= fewestVoices ? [word] : []));
  return [...new Set([...wordsOf(phrases), ...common])];
};

/** How many times a phrasing of the rule files is taught for each line of a voice. */
const plainCounts = 2;

/** The wordings of the phrasings with their topics, but for those that two topics share. */
const plainWordings = (
  phrasings: readonly Lesson[],
  find: (words: string) => Line,
): readonly (readonly [number, string])[] => {
  const topics = new Map<number, Set<string>>();
  for (const { words, topics: own } of phrasings) {
    const wording = hashOf(wordingOf(find(words)));
    topics.set(wording, new Set([...(topics.get(wording) ?? []), ...own]));
  }
  return [...topics].flatMap(([wording, own]) => {
    const [topic, other] = own;
    return topic === undefined || other !== undefined ? [] : [[wording, topic] as const];
  });
};

/** One line as one model is taught it. */
interface Heard {
  readonly features: readonly string[];
  readonly topics: readonly string[];
  readonly voice: number;
}

/** The features that so many voices use; the rule files, written by many, count as two. */
const commonTo = (heard: readonly Heard[], voices: number): ReadonlySet<string> => {
  const users = new Map<string, Set<number>>();
  for (const { features, voice } of heard) {
    for (const feature of features) {
      const so = users.get(feature) ?? new Set();
      users.set(feature, so.add(voice));
    }
  }
  return new Set(
    [...users].flatMap(([feature, by]) => (by.size + (by.has(0) ? 1 : 0) >= voices ? [feature] : [])),
  );
};

/**
 * Learns from a rulebook's phrasings and from labelled lines, one list a voice. Takes half a minute: a build does it
 * once. The same lines give the same weights.
 */
export const learn = (book: Rulebook, voices: readonly (readonly Spoken[])[]): Learned => {
  const phrasings = phrasingsOf(book);
  const phrases = allPhrases(book);
  const index = indexPhrases(phrases);
  const units = unitWords(book.units);
  const vocabulary = vocabularyOf(
    [
      ...phrases.map((each) => each.words),
      ...phrasings.map((each) => each.words),
      ...units.keys(),
      ...Object.values(book.words.kinds).flat(),
    ],
    voices,
  );
  const slips = slipsOf(vocabulary);
  const grounds: Grounds = {
    ...spokenAt,
    namings: nameBirds(spokenAt.groups, book.words.kinds),
    units,
    index,
  };
  const names = spokenAt.groups.map((group) => group.name);
  const find = (words: string): Line => findAll(mendSlips(tokenise(words), { ...slips, names }), grounds);
  const read = (words: string): Cues => cuesOf(find(words), classIn(book));
  const known = new Set([
    ...topicsOf(book).map((topic) => topic.id),
    outside,
    sameAgain,
    ...Object.keys(book.words.hazards).map(hazardTopic),
  ]);
  const spoken = voices.flatMap((voice, at): Lesson[] => {
    const wanted = wantedIn(voice);
    return voice.map(({ text }, line) => ({
      words: text,
      topics: (wanted[line] ?? []).filter((topic) => known.has(topic)),
      voice: at + 1,
    }));
  });
  // More than twice makes it too sure of itself: wrong 3.4 % of fresh lines instead of 2.5 at five times.
  const plain = Array.from({ length: plainCounts }, () => phrasings).flat();
  const lessons = [...plain, ...spoken]
    .filter(({ topics }) => topics.length > 0)
    .map(({ words, topics, voice }) => ({ cues: read(words), topics, voice }));
  const asked = new Set(Object.keys(book.questions));
  const supposing = voices.flatMap((voice, at) =>
    voice.flatMap(({ text, topic, supposes }) => {
      if (supposes === null && !asked.has(topic)) return [];
      const cues = read(text);
      // A line without a value may ask anything: it cannot teach when a value is supposed.
      return supposes === null && !cues.words.some(({ id }) => isValueCue(id))
        ? []
        : [{ cues: kindCuesOf(cues, topic), topics: [supposes ?? nothing], voice: at + 1 }];
    }),
  );
  const kindsBy = (view: keyof Cues): readonly Heard[] =>
    supposing.map(({ cues, topics, voice }) => ({ features: cues[view], topics, voice }));
  const seenBy = (view: keyof Cues): readonly Heard[] =>
    lessons.map(({ cues, topics, voice }) => ({ features: cues[view].map((cue) => cue.id), topics, voice }));
  const modelOf = (heard: readonly Heard[], name: keyof typeof training): Weights => {
    const common = commonTo(heard, training[name].voices);
    const examples = heard.map(({ features, topics }) => ({
      features: features.filter((feature) => common.has(feature)),
      topics,
    }));
    return pack(train(examples, training[name]));
  };
  return {
    index: [...index],
    vocabulary,
    plain: plainWordings(phrasings, find),
    words: modelOf(seenBy('words'), 'words'),
    letters: modelOf(seenBy('letters'), 'letters'),
    kindWords: modelOf(kindsBy('words'), 'kindWords'),
    kindLetters: modelOf(kindsBy('letters'), 'kindLetters'),
  };
};
