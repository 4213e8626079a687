/** Everything one answer is worked out from: the rulebook, the facts it knows, the state and its problems. */
import type { Day } from '../day.ts';
import type { Fact } from '../facts/define.ts';
import { type Memory, rememberFacts } from '../facts/memory.ts';
import { openWorkings, type Workings } from '../facts/workings.ts';
import type { Problem } from '../problem.ts';
import { byRank } from '../reason/choose.ts';
import { rememberRuns } from '../reason/remember-runs.ts';
import type { Run } from '../reason/run.ts';
import type { SortKeys } from '../rulebook/figures.ts';
import type { Rule, Rulebook, State, Supposition } from '../types.ts';

/** What has been worked out for one answer, or for answers that are set beside each other. */
export interface WorkedOut {
  readonly facts: Memory;
  readonly run: Run;
}

export const rememberWorkings = (): WorkedOut => ({ facts: rememberFacts(), run: rememberRuns() });

export interface World {
  readonly book: Rulebook;
  readonly facts: ReadonlyMap<string, Fact>;
  readonly state: State;
  readonly problems: readonly Problem[];
  /** Groups named in the question, where facts of the flock compare some of them. */
  readonly named?: readonly string[] | undefined;
  readonly sortKeys?: SortKeys | undefined;
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
    memory: world.memory?.facts,
    named: world.named,
    on,
    until,
    supposing,
  });

/** The rules of a question; its id is where theirs begin, so that no other rule has to be read. */
const rulesAbout = ({ rules }: Rulebook, question: string): readonly Rule[] =>
  Object.keys(rules).flatMap((id) => (id.startsWith(`${question}/`) ? (rules[id] ?? []) : []));

/** The rules of a question that are not switched off, highest-ranking first: a rule that is off still hands its rank on. */
export const rulesOf = ({ book, off }: World, question: string): readonly Rule[] =>
  byRank(rulesAbout(book, question)).filter(({ id }) => off?.has(id) !== true);
