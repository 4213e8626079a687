/** The ways to take a line beside the turn before it: what goes on with it is given to its topic. */
import type { Line } from './find/all.ts';
import { followUp } from './follow-up.ts';
import type { Lexicon } from './lexicon.ts';
import { inOrder, type Match, type Ranking } from './match.ts';
import type { About } from './types.ts';

/** How far the form of a follow-up raises the odds that a line is one. */
const followed = 0.6;

const share = (odds: number): number => 1 / (1 + Math.exp(-odds));
const oddsOf = (chance: number): number => Math.log(chance / (1 - chance));

/** Brings the chances back to a sum of 1. */
const evenOut = (ranking: Ranking): Ranking => {
  const sum = ranking.matches.reduce((all, each) => all + each.score, ranking.outside + ranking.same);
  return {
    ...ranking,
    matches: ranking.matches.map((match) => ({ ...match, score: match.score / sum })).sort(inOrder),
    outside: ranking.outside / sum,
    same: ranking.same / sum,
  };
};

/**
 * Ranks beside the turn before: what goes on with it is given to its topic, or to nobody where there was none.
 * `follows` is the match that goes on, where going on is what speaks for it.
 */
export const rankWithBefore = (
  ranking: Ranking,
  line: Line,
  about: About,
  lexicon: Lexicon,
): Ranking & { readonly follows: Match | null } => {
  const last = about.before?.sure === true ? about.before.readings[0]?.topic : undefined;
  const own = ranking.matches.find((match) => match.topic.id === last);
  if (own === undefined) return { ...evenOut({ ...ranking, same: 0 }), follows: null };
  const formed = followUp(line, about.before, lexicon);
  const same = formed === null ? ranking.same : share(oddsOf(ranking.same) + formed.score * followed);
  const rest = (1 - same) / (1 - ranking.same);
  const taken: Match = {
    topic: own.topic,
    score: own.score * rest + same,
    evidence: [
      ...(formed?.evidence ?? []),
      ...own.evidence,
      { idea: 'goes on with what was asked', words: '', weight: same },
    ],
  };
  const matches = ranking.matches
    .map((match) => (match === own ? taken : { ...match, score: match.score * rest }))
    .sort(inOrder);
  return {
    ...ranking,
    matches,
    outside: ranking.outside * rest,
    same: 0,
    follows: formed !== null || same > own.score * rest ? taken : null,
  };
};
