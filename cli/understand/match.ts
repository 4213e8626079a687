/** How likely a line is about each topic, and which of its words say so. */
import { type Feature, wordingOf } from './features.ts';
import { type Line, wordsUnder } from './find/all.ts';
import { cuesOf } from './learn/cues.ts';
import { hashOf } from './learn/pack.ts';
import { hazardTopic, outside, sameAgain } from './learn/spoken.ts';
import { mixed, weigh } from './learn/weigh.ts';
import type { Lexicon, Topic } from './lexicon.ts';
import type { Evidence } from './types.ts';

/** A topic with its chance, 0 to 1, and the evidence behind it, heaviest first. */
export interface Match {
  readonly topic: Topic;
  readonly score: number;
  readonly evidence: readonly Evidence[];
}

/** All topics, likeliest first, and what is left for anything else. All chances add up to 1. */
export interface Ranking {
  readonly matches: readonly Match[];
  /** The chance that the line is about nothing that is known here, dangers included. */
  readonly outside: number;
  /** The danger that it likeliest speaks of, and how likely. */
  readonly hazard: { readonly id: string; readonly chance: number } | null;
  /** The chance that it goes on with what was asked before. */
  readonly same: number;
}

/** How much letters count beside words; the two are mixed as logarithms. Set by leaving voices out. */
const lettersCount = 0.45;

/** How many topics are told with their evidence, and how much a piece must count to be told. */
const told = { topics: 4, least: 0.15 };

/** What words say for a topic beyond what they say for the average one, heaviest first. */
const evidenceFor = (
  saidFor: readonly number[],
  features: readonly Feature[],
  words: string,
  line: Line,
): readonly Evidence[] => {
  const byWords = new Map<string, Evidence>();
  for (const [at, { id, from, to }] of features.entries()) {
    const weight = saidFor[at] ?? 0;
    const isIdea = id.startsWith('=');
    const isShape = id.startsWith('<') && to - from === line.tokens.length;
    const under = isShape ? '' : wordsUnder(words, line.tokens, from, to);
    const idea = isIdea ? id.slice(1) : isShape ? 'the form of the line' : 'wording';
    const key = `${idea}|${under}`;
    byWords.set(key, { idea, words: under, weight: (byWords.get(key)?.weight ?? 0) + weight });
  }
  return [...byWords.values()]
    .filter((each) => Math.abs(each.weight) >= told.least)
    .sort((one, other) => Math.abs(other.weight) - Math.abs(one.weight));
};

/** Likeliest first; equal ones in the order of their ids. */
export const inOrder = (one: Match, other: Match): number =>
  other.score - one.score || (one.topic.id < other.topic.id ? -1 : 1);

/** How likely a line is at least about the topic whose own wording it has. */
const inOwnWording = 0.9;

/** The chances of a line that is worded as the rule files word a topic: plain ways are heard whatever else sounds alike. */
const givenWording = (
  chances: ReadonlyMap<string, number>,
  topic: string | undefined,
): ((name: string) => number) => {
  const now = topic === undefined ? 1 : (chances.get(topic) ?? 0);
  if (now >= inOwnWording) return (name) => chances.get(name) ?? 0;
  const rest = (1 - inOwnWording) / (1 - now);
  return (name) => (name === topic ? inOwnWording : (chances.get(name) ?? 0) * rest);
};

/** Ranks all topics for a line by itself. */
export const matchTopics = (words: string, line: Line, lexicon: Lexicon): Ranking => {
  const cues = cuesOf(line, lexicon.classOf);
  const idsOf = (features: readonly Feature[]): readonly string[] => features.map((feature) => feature.id);
  const { chances: byWords, saidFor } = weigh(lexicon.words, idsOf(cues.words));
  const { chances: byLetters } = weigh(lexicon.letters, idsOf(cues.letters));
  // All that lies outside is one thing here, danger or not: parted, each view would find too little of each.
  const away = [outside, ...lexicon.hazards.map(hazardTopic)];
  const joined = (view: ReadonlyMap<string, number>): ReadonlyMap<string, number> =>
    new Map(view).set(
      outside,
      away.reduce((sum, each) => sum + (view.get(each) ?? 0), 0),
    );
  const names = [...lexicon.topics.map((topic) => topic.id), outside, sameAgain];
  const chances = mixed(names, [joined(byWords), 1 - lettersCount], [joined(byLetters), lettersCount]);
  const plain = lexicon.plain.get(hashOf(wordingOf(line)));
  const chanceOf = givenWording(chances, plain);
  const parts = mixed(away, [byWords, 1 - lettersCount], [byLetters, lettersCount]);
  const outsideChance = chanceOf(outside);
  const [hazard = null] = lexicon.hazards
    .map((id) => ({ id, chance: outsideChance * (parts.get(hazardTopic(id)) ?? 0) }))
    .sort((one, other) => other.chance - one.chance);
  const matches = lexicon.topics
    .map((topic): Match => ({ topic, score: chanceOf(topic.id), evidence: [] }))
    .sort(inOrder)
    .map((match, rank) =>
      rank < told.topics
        ? { ...match, evidence: evidenceFor(saidFor(match.topic.id), cues.words, words, line) }
        : match,
    );
  return { matches, outside: outsideChance, hazard, same: chanceOf(sameAgain) };
};
