/** How well a line fits each topic: ideas by the weights of the rule files, learned likeness, the sentence's form, and what stays unexplained. */
import { featuresOf, ideasOf } from './features.ts';
import { type Line, wordsUnder } from './find/all.ts';
import { functionWords } from './function-words.ts';
import type { Lexicon, Topic } from './lexicon.ts';
import { nearnessToNot, weighFeature } from './likeness.ts';
import type { Evidence } from './types.ts';

/** A topic with its score and the evidence behind it, heaviest first. */
export interface Match {
  readonly topic: Topic;
  readonly score: number;
  readonly evidence: readonly Evidence[];
}

/** How the parts are weighed against one another; set by trying on labelled lines, and no knowledge of the trade. */
export const part = {
  likeness: 0.4,
  /** Share of the likeness that a word which only holds the sentence together keeps. */
  small: 0.6,
  /** Against records, for each step that a line looks asked; against questions, for each that it looks told. */
  asked: 2.2,
  told: 1.5,
  unexplained: 1.5,
  /** The same for ideas that this program is not about at all, whatever else a line says. */
  never: 8,
  /** Against a topic, for nearness to a line that must not be taken for it, from `notFrom` on. */
  not: 10,
  notFrom: 0.4,
  /** Against every topic, for a word that stands in no rule file. */
  strange: 0.4,
  mostStrange: 3,
  /** A line with more features than this is damped, since it has more chances to look like anything. */
  long: 24,
};

/** Evidence under this counts, but is not worth showing. */
const leastShown = 0.05;

/** Ideas of a line with the words that carry them, each once; the longest words win. */
const ideasIn = (words: string, line: Line, lexicon: Lexicon): ReadonlyMap<string, string> => {
  const found = new Map<string, string>();
  for (const span of line.spans) {
    if (span.kind !== 'term') continue;
    const under = wordsUnder(words, line.tokens, span.from, span.to);
    for (const idea of ideasOf(span, lexicon.classOf)) {
      if ((found.get(idea)?.length ?? 0) < under.length) found.set(idea, under);
    }
  }
  return found;
};

/** Words that no rule file knows. */
const strangeIn = (line: Line, lexicon: Lexicon): readonly string[] => {
  const isValue = (at: number): boolean => line.spans.some((span) => span.from <= at && at < span.to);
  return line.tokens
    .filter(
      (token, at) =>
        /^[a-z]{3,}$/.test(token.word) &&
        !isValue(at) &&
        !lexicon.vocabulary.has(token.word) &&
        !functionWords.has(token.word),
    )
    .map((token) => token.word);
};

const weighIdeas = (
  topic: Topic,
  ideas: ReadonlyMap<string, string>,
  lexicon: Lexicon,
): readonly Evidence[] =>
  [...ideas].flatMap(([idea, words]): Evidence[] => {
    const weight = topic.ideas[idea];
    if (weight !== undefined) return weight === 0 ? [] : [{ idea, words, weight }];
    if (idea.startsWith('never-')) return [{ idea: `outside: ${idea}`, words, weight: -part.never }];
    // the name of a setting (pen, freezer, bag) is a thing of the place, which any question may mention
    const isClaimed = lexicon.claimed[topic.family].has(idea) || idea === 'setting';
    return isClaimed ? [] : [{ idea: `outside: ${idea}`, words, weight: -part.unexplained }];
  });

/** The form speaks only against: anything can be asked or told about the same things. */
const weighShape = (topic: Topic, form: number): readonly Evidence[] => {
  const clear = Math.max(-2, Math.min(2, form));
  if (topic.family === 'ask' && clear < 0) return [{ idea: 'told', words: '', weight: clear * part.told }];
  if (topic.family === 'tell' && clear > 0)
    return [{ idea: 'asked', words: '', weight: -clear * part.asked }];
  return [];
};

const weighStrange = (strange: readonly string[]): readonly Evidence[] => {
  const weight = -part.strange * Math.min(strange.length, part.mostStrange);
  return strange.length === 0 ? [] : [{ idea: 'words not known', words: strange.join(' '), weight }];
};

/** All topics, best first; equal ones in the order of their ids, so that nothing wavers. */
export const matchTopics = (words: string, line: Line, form: number, lexicon: Lexicon): readonly Match[] => {
  const ideas = ideasIn(words, line, lexicon);
  const unknown = weighStrange(strangeIn(line, lexicon));
  const found = featuresOf(line, lexicon.classOf);
  const features = found.map((feature) => ({
    weights: weighFeature(lexicon.likeness, feature.id),
    words: wordsUnder(words, line.tokens, feature.from, feature.to),
    share: functionWords.has(feature.id) ? part.small : 1,
  }));
  const damped = part.likeness / Math.max(1, Math.sqrt(features.length / part.long));
  const weighWording = (topic: Topic): readonly Evidence[] => {
    const byWords = new Map<string, number>();
    for (const feature of features) {
      const weight = (feature.weights?.get(topic.id) ?? 0) * damped * feature.share;
      byWords.set(feature.words, (byWords.get(feature.words) ?? 0) + weight);
    }
    return [...byWords].map(([under, weight]) => ({ idea: 'wording', words: under, weight }));
  };
  const ids = found.map((feature) => feature.id);
  const weighNot = (topic: Topic): readonly Evidence[] => {
    const near = nearnessToNot(lexicon.likeness, topic.id, ids) - part.notFrom;
    return near <= 0
      ? []
      : [{ idea: 'like a line that means something else', words, weight: -near * part.not }];
  };
  return lexicon.topics
    .map((topic): Match => {
      const all = [
        ...weighIdeas(topic, ideas, lexicon),
        ...weighWording(topic),
        ...weighShape(topic, form),
        ...weighNot(topic),
        ...unknown,
      ];
      const evidence = all
        .filter((each) => Math.abs(each.weight) >= leastShown)
        .sort((one, other) => Math.abs(other.weight) - Math.abs(one.weight));
      return { topic, score: all.reduce((sum, each) => sum + each.weight, 0), evidence };
    })
    .sort((one, other) => other.score - one.score || (one.topic.id < other.topic.id ? -1 : 1));
};
