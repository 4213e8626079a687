/** A line heard as one of the keeper's own phrasings of a question: nothing is learned from those, they are looked for as they stand. */
import { finderFor } from './finder.ts';
import type { Lexicon } from './lexicon.ts';
import { findTerms, indexPhrases, isSmall } from './phrase-index.ts';
import { readQuestion } from './read.ts';
import type { About, Heard } from './types.ts';

/** Words that may stand beside an own phrasing without making the line something else. */
const beside = new Set('for on at in about please now then and with when is it do does'.split(' '));

/**
 * The line as the question that it asks in the keeper's own words, or null. Beside the phrasing there may only be what a
 * question takes anyway: groups, days and amounts.
 */
export const readAsOwn = (words: string, about: About, lexicon: Lexicon): Heard | null => {
  const phrases = Object.values(about.book.questions).flatMap(({ id, own = [] }) =>
    own.map((phrase) => ({ words: phrase, list: 'idea' as const, id })),
  );
  if (phrases.length === 0) return null;
  const line = finderFor(about, lexicon)(words);
  const isName = (at: number): boolean =>
    line.spans.some((span) => span.kind === 'group' && span.from <= at && at < span.to);
  const found = findTerms(indexPhrases(phrases), line.tokens, isName).toSorted(
    (a, b) => b.to - b.from - (a.to - a.from),
  );
  const [longest] = found;
  const topic = lexicon.topics.find(({ id }) => id === longest?.id);
  if (longest === undefined || topic === undefined) return null;
  const isTaken = line.tokens.every(
    ({ word, isMark }, at) =>
      isMark ||
      (longest.from <= at && at < longest.to) ||
      isSmall(word) ||
      beside.has(word) ||
      line.spans.some((span) => span.kind !== 'term' && span.from <= at && at < span.to),
  );
  if (!isTaken) return null;
  const evidence = [{ idea: 'your own phrasing', words, weight: 1 }];
  const reading = readQuestion({ topic, score: 1, evidence }, words, line, about, lexicon);
  return { words, readings: [reading], sure: true, nearest: [] };
};
