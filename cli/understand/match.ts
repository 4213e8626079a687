/** How well a line fits each topic: ideas by the weights of the rule files, learned likeness, the sentence's form, and what stays unexplained. */
import { featuresOf, ideasOf } from './features.ts';
import { type Line, wordsUnder } from './find/all.ts';
import type { Lexicon, Topic } from './lexicon.ts';
import type { Evidence } from './types.ts';

/** A topic with its score and the evidence behind it, heaviest first. */
export interface Match {
  readonly topic: Topic;
  readonly score: number;
  readonly evidence: readonly Evidence[];
}

/** How the parts are weighed against one another; set by trying on labelled lines, and no knowledge of the trade. */
const part = { likeness: 0.42, form: 0.9, unexplained: 1.1 };

const formWeight = (topic: Topic, form: number): number =>
  topic.family === 'about' ? 0 : (topic.family === 'ask' ? 1 : -1) * Math.max(-2, Math.min(2, form)) * part.form;

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

const matchTopic = (
  topic: Topic,
  ideas: ReadonlyMap<string, string>,
  likeness: readonly Evidence[],
  form: number,
  lexicon: Lexicon,
): Match => {
  const carried = [...ideas].flatMap(([idea, words]): Evidence[] => {
    const weight = topic.ideas[idea];
    return weight === undefined || weight === 0 ? [] : [{ idea, words, weight }];
  });
  const unexplained = [...ideas].flatMap(([idea, words]): Evidence[] =>
    topic.ideas[idea] === undefined && !lexicon.claimed[topic.family].has(idea)
      ? [{ idea: `outside: ${idea}`, words, weight: -part.unexplained }]
      : [],
  );
  const shape = formWeight(topic, form);
  const formed: readonly Evidence[] =
    shape === 0 ? [] : [{ idea: form > 0 ? 'asked' : 'told', words: '', weight: shape }];
  const evidence = [...carried, ...unexplained, ...likeness, ...formed].sort(
    (one, other) => Math.abs(other.weight) - Math.abs(one.weight),
  );
  return { topic, score: evidence.reduce((sum, each) => sum + each.weight, 0), evidence };
};

/** All topics, best first; equal ones in the order of their ids, so that nothing wavers. */
export const matchTopics = (words: string, line: Line, form: number, lexicon: Lexicon): readonly Match[] => {
  const ideas = ideasIn(words, line, lexicon);
  const features = featuresOf(line, lexicon.classOf);
  // a long line has more chances to look like anything
  const dampen = part.likeness / Math.max(1, Math.sqrt(features.length / 24));
  return lexicon.topics
    .map((topic) => {
      const likeness = features.flatMap((feature): Evidence[] => {
        const weight = lexicon.likeness.get(feature.id)?.get(topic.id);
        if (weight === undefined) return [];
        const under = wordsUnder(words, line.tokens, feature.from, feature.to);
        return [{ idea: 'wording', words: under, weight: weight * dampen }];
      });
      return matchTopic(topic, ideas, likeness, form, lexicon);
    })
    .sort((one, other) => other.score - one.score || (one.topic.id < other.topic.id ? -1 : 1));
};
