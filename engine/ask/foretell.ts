/** Facts that only another question's rules can tell: the first day on which they say yes. */
import type { Day } from '../day.ts';
import { isVerdict } from '../rulebook/ranking.ts';
import type { Question, Supposition } from '../types.ts';
import { evaluate, verdictOf } from './evaluate.ts';
import { type Again, firstTurn } from './turns.ts';
import { rulesOf, type World, workingsOn } from './world.ts';

export interface Foretelling {
  readonly question: Question;
  readonly group: string;
  readonly on: Day;
  readonly supposing: readonly Supposition[];
  /** How many days to look ahead. */
  readonly lookAhead: number;
}

/** The first day on which the rules of a question say yes for a group: today, the day they turn to it, or null. */
const firstYesOf = async (
  world: World,
  id: string,
  { group, on, supposing, lookAhead }: Foretelling,
): Promise<Day | null> => {
  const deciding = rulesOf(world, id).filter(({ gives }) => isVerdict(gives));
  const again: Again = (change) =>
    evaluate(world, deciding, workingsOn(world, change.on ?? on, null, supposing), group);
  const now = await again({});
  if (verdictOf(now) === 'yes') return on;
  const turn = now.choice.winner === null ? null : await firstTurn(now, again, on, lookAhead);
  return turn?.verdict === 'yes' ? turn.on : null;
};

/** The days foretold for a group, laid over the facts that stand for them; those that are not in sight are left out. */
export const foretell = async (world: World, asked: Foretelling): Promise<readonly Supposition[]> => {
  const told: Supposition[] = [];
  for (const [fact, id] of Object.entries(asked.question.foretells)) {
    const isSaid = asked.supposing.some(({ what }) => 'fact' in what && what.fact === fact);
    const first = isSaid ? null : await firstYesOf(world, id, asked);
    if (first !== null) told.push({ what: { fact }, value: first, adds: false });
  }
  return told;
};
