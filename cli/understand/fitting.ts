/** What the state of the flock makes unlikely: with no birds on record nothing can be told of birds but that they came. */
import { inOrder, type Ranking } from './match.ts';
import type { About } from './types.ts';

/** Records of birds that are there already. */
const ofBirds = new Set(
  ['out', 'move', 'loss', 'weigh', 'process', 'keep', 'sign'].map((kind) => `tell:${kind}`),
);

/** How much of its chance such a record keeps where there are no birds. */
const left = 0.1;

/** The ranking with what does not fit the flock made less likely; all chances still add up to 1. */
export const fitToFlock = (ranking: Ranking, { groups }: About): Ranking => {
  if (groups.length > 0) return ranking;
  const matches = ranking.matches.map((match) =>
    ofBirds.has(match.topic.id) ? { ...match, score: match.score * left } : match,
  );
  const sum = matches.reduce((all, { score }) => all + score, ranking.outside + ranking.same);
  return {
    ...ranking,
    matches: matches.map((match) => ({ ...match, score: match.score / sum })).sort(inOrder),
    outside: ranking.outside / sum,
    same: ranking.same / sum,
  };
};
