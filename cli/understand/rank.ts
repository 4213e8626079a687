/** All the ways to take a line, best first: topics matched, drafts judged, the last turn's topic followed up, suppositions set aside. */
import { type Line, wordsUnder } from './find/all.ts';
import { findSupposing } from './find/supposing.ts';
import { followUp } from './follow-up.ts';
import { weighForm } from './form.ts';
import type { Lexicon } from './lexicon.ts';
import { type Match, matchTopics } from './match.ts';
import { tell } from './tell.ts';
import type { About } from './types.ts';

/** How a finished or a lacking draft counts for its kind; set by trying on labelled lines. */
const draftWeight = { whole: 0.7, lacks: -0.9, judged: 6 };

/** How much a line without its supposition counts beside the whole of it, from so many words on. */
const aside = { share: 0.5, fewestWords: 3 };

/** Best first; equal ones in the order of their ids. */
export const inOrder = (one: Match, other: Match): number =>
  other.score - one.score || (one.topic.id < other.topic.id ? -1 : 1);

/** A record that can be made whole from the words is likelier meant than one that cannot. */
const judgeDrafts = (matches: readonly Match[], words: string, line: Line, about: About): readonly Match[] =>
  matches
    .map((match, rank): Match => {
      if (match.topic.family !== 'tell' || rank >= draftWeight.judged) return match;
      const told = tell(match.topic.id.slice('tell:'.length), words, line, about, null);
      const lacks = told?.draft.missing.filter((name) => name !== 'group').length ?? 1;
      const weight = lacks === 0 ? draftWeight.whole : lacks * draftWeight.lacks;
      const idea = lacks === 0 ? 'a whole record' : 'parts of the record missing';
      return {
        ...match,
        score: match.score + weight,
        evidence: [...match.evidence, { idea, words: '', weight }],
      };
    })
    .toSorted(inOrder);

/** The line without its suppositions, or null when too little is left to say what is asked. */
const withoutSupposing = (words: string, line: Line): string | null => {
  const supposing = findSupposing(words, line);
  const rest = line.tokens.filter(
    (token, at) => !token.isMark && !supposing.some((each) => each.from <= at && at < each.to),
  );
  if (supposing.length === 0 || rest.length < aside.fewestWords) return null;
  return supposing.reduce(
    (text, each) => text.replace(wordsUnder(words, line.tokens, each.from, each.to), ' '),
    words,
  );
};

const mix = (whole: readonly Match[], rest: readonly Match[]): readonly Match[] =>
  whole
    .map((match): Match => {
      const other = rest.find((each) => each.topic.id === match.topic.id);
      if (other === undefined) return match;
      return { ...match, score: match.score * (1 - aside.share) + other.score * aside.share };
    })
    .toSorted(inOrder);

/** Ranks all topics for a line by itself. `find` runs the finders over a text. */
export const rankTopics = (
  words: string,
  line: Line,
  about: About,
  lexicon: Lexicon,
  find: (words: string) => Line,
): readonly Match[] => {
  const whole = matchTopics(words, line, weighForm(line), lexicon);
  const text = withoutSupposing(words, line);
  const rest = text === null ? null : find(text);
  const matches =
    text === null || rest === null ? whole : mix(whole, matchTopics(text, rest, weighForm(rest), lexicon));
  return judgeDrafts(matches, words, line, about);
};

/** The same with the last turn's topic put in where the line follows up on it; `follows` is that match. */
export const rankWithBefore = (
  matches: readonly Match[],
  line: Line,
  about: About,
  lexicon: Lexicon,
): { readonly ranked: readonly Match[]; readonly follows: Match | null } => {
  const follows = followUp(line, about.before, lexicon);
  if (follows === null) return { ranked: matches, follows };
  const others = matches.filter(
    (match) => match.topic.id !== follows.topic.id || match.score > follows.score,
  );
  return { ranked: [follows, ...others].toSorted(inOrder), follows };
};
