/** What would turn a verdict now: the smallest single changes, and where no single one does, the smallest pair. Each has been tried. */
import type { LeafOutcome } from '../../reason/outcomes.ts';
import type { Change, TurnsOn } from '../../types.ts';
import { type Evaluation, verdictOf } from '../evaluate.ts';
import { type Again, isSettled, type Trial } from '../turns.ts';
import { candidatesIn, type Grounds, sizeOf } from './candidates.ts';

/** Pairs tried at most. A limit of cost, not of trade: it keeps the search within some twenty times one answer. */
const mostPairs = 24;

interface Tried {
  readonly change: Change;
  readonly then: Evaluation;
}

const trialOf = ({ fact, group, to }: Change): Trial => ({ fact, group, value: to });

const keyOf = ({ fact, group }: Change): string => JSON.stringify([fact, group]);

const isTurned = (now: Evaluation, then: Evaluation): boolean =>
  verdictOf(then) !== verdictOf(now) && isSettled(verdictOf(then));

const leavesOfAll = ({ outcomes }: Evaluation, { rules }: Grounds): readonly LeafOutcome[] =>
  outcomes.filter(({ rule }) => rules.includes(rule)).flatMap(({ leaves }) => leaves);

/** The comparisons on which the verdict hangs: what decides the rule that wins, and what keeps those from it that say otherwise. */
const decidingLeaves = (evaluation: Evaluation, { rules }: Grounds): readonly LeafOutcome[] => {
  const { winner } = evaluation.choice;
  return evaluation.outcomes
    .filter(({ rule }) => rules.includes(rule))
    .filter(
      (each) => each === winner || (each.rule.gives !== winner?.rule.gives && each.outcome === 'failed'),
    )
    .flatMap(({ deciding }) => deciding);
};

/** Tries pairs of a change that turned nothing by itself and one that turns what is left, and keeps the smallest. */
const smallestPair = async (
  now: Evaluation,
  again: Again,
  grounds: Grounds,
  tried: readonly Tried[],
): Promise<readonly TurnsOn[]> => {
  const seen = new Set<string>();
  let best: TurnsOn | null = null;
  let bestSize = Number.POSITIVE_INFINITY;
  for (const { change: first, then } of tried) {
    for (const second of candidatesIn(grounds, then, decidingLeaves(then, grounds))) {
      const size = sizeOf(first) + sizeOf(second);
      // Candidates come smallest first: the rest of them can only be larger.
      if (size >= bestSize) break;
      const key = JSON.stringify(
        [trialOf(first), trialOf(second)].sort((a, b) => (a.fact < b.fact ? -1 : 1)),
      );
      if (keyOf(second) === keyOf(first) || seen.has(key)) continue;
      if (seen.size >= mostPairs) return best === null ? [] : [best];
      seen.add(key);
      const both = await again({ suppose: [trialOf(first), trialOf(second)] });
      if (!isTurned(now, both)) continue;
      best = { ...first, and: second, verdict: verdictOf(both) };
      bestSize = size;
    }
  }
  return best === null ? [] : [best];
};

/**
 * Every fact that by changing alone would turn the verdict, each with its nearest turning value, smallest change first;
 * where there is none, the smallest pair found. Whatever is told has been tried: the rules were run with it.
 */
export const turningChanges = async (
  now: Evaluation,
  again: Again,
  grounds: Grounds,
): Promise<readonly TurnsOn[]> => {
  const found = new Map<string, TurnsOn>();
  const vain: Tried[] = [];
  for (const change of candidatesIn(grounds, now, leavesOfAll(now, grounds))) {
    if (found.has(keyOf(change))) continue;
    const then = await again({ suppose: [trialOf(change)] });
    if (isTurned(now, then)) found.set(keyOf(change), { ...change, verdict: verdictOf(then) });
    else vain.push({ change, then });
  }
  return found.size > 0 ? [...found.values()] : smallestPair(now, again, grounds, vain);
};
