/** Everything one answer is worked out from: the rulebook, the facts it knows, the state and its problems. */
import type { Day } from '../day.ts';
import type { Fact } from '../facts/define.ts';
import { type Memory, rememberFacts } from '../facts/memory.ts';
import type { See } from '../facts/views.ts';
import { openWorkings, type Workings } from '../facts/workings.ts';
import type { Problem } from '../problem.ts';
import { rememberRuns } from '../reason/remember-runs.ts';
import type { Run } from '../reason/run.ts';
import type { SortKeys } from '../rulebook/figures.ts';
import type { Rule, Rulebook, State, Supposition } from '../types.ts';
import { type Ranked, rankedRules, rememberRanks } from './ranked-rules.ts';

/** What has been worked out for one answer, or for answers that are set beside each other. */
export interface WorkedOut {
  readonly facts: Memory;
  readonly run: Run;
  readonly ranked: Ranked;
}

export const rememberWorkings = (): WorkedOut => ({
  facts: rememberFacts(),
  run: rememberRuns(),
  ranked: rememberRanks(),
});

export interface World {
  readonly book: Rulebook;
  readonly facts: ReadonlyMap<string, Fact>;
  readonly state: State;
  readonly problems: readonly Problem[];
  /** Groups named in the question, where facts of the flock compare some of them. */
  readonly named?: readonly string[] | undefined;
  readonly sortKeys?: SortKeys | undefined;
  readonly see?: See | undefined;
  readonly memory?: WorkedOut | undefined;
  /** Rules switched off for this answer. */
  readonly off?: ReadonlySet<string> | undefined;
}

/** The world with the rules switched off that a request supposes away; the others keep their order. */
export const withoutSupposedAway = (world: World, supposing: readonly Supposition[]): World => {
  const off = supposing.flatMap(({ what }) => ('rule' in what ? [what.rule] : []));
  return off.length === 0 ? world : { ...world, off: new Set([...(world.off ?? []), ...off]) };
};

/** Facts on another day or under suppositions, over the same state. */
export const workingsOn = (
  world: World,
  on: Day,
  until: Day | null,
  supposing: readonly Supposition[],
): Workings =>
  openWorkings({
    state: world.state,
    book: world.book,
    facts: world.facts,
    sortKeys: world.sortKeys,
    see: world.see,
    memory: world.memory?.facts,
    named: world.named,
    on,
    until,
    supposing,
  });

/** The rules of a question that are not switched off, highest-ranking first: a rule that is off still hands its rank on. */
export const rulesOf = ({ book, off, memory }: World, question: string): readonly Rule[] => {
  const ranked = (memory?.ranked ?? rankedRules)(book, question);
  return off === undefined ? ranked : ranked.filter(({ id }) => !off.has(id));
};
