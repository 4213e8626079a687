/** Which of many possible causes are worth trying one by one. */
import type { Answer, Cause, Difference } from '../types.ts';
import { isFoundAhead, keyOf, type Points } from './difference.ts';

/** The later answer's points with these causes undone; `ahead` when days found by looking ahead are wanted. */
export type Replay = (undone: readonly Cause[], ahead: boolean) => Promise<Points>;

export interface Suspects {
  /** All that may matter, in the order in which they are to be tried. */
  readonly all: readonly Cause[];
  /** Those to be tried one by one. */
  readonly likely: readonly Cause[];
}

/** More entries than this are not tried one by one: a limit of cost alone. The latest ones are. */
const mostTried = 10;

const entriesIn = (causes: readonly Cause[]): readonly Cause[] =>
  causes.filter(({ kind }) => kind === 'entry');

/** Whether undoing these together makes anything of one of the differences. */
const isAnyMoved = async (
  differences: readonly Difference[],
  causes: readonly Cause[],
  replay: Replay,
): Promise<boolean> => {
  if (causes.length === 0) return false;
  const then = await replay(causes, false);
  return differences.some((each) => (then.get(keyOf(each))?.value ?? null) !== each.to);
};

/** Entries that an answer says it rests on; an undo or a correction counts with the line that it is about. */
const restsOn = (answers: readonly Answer[]): ((cause: Cause) => boolean) => {
  const steps = answers.flatMap(({ workings }) => workings);
  const lines = new Set(steps.flatMap(({ entries }) => entries.map(({ line }) => line)));
  return (cause) =>
    cause.kind !== 'entry' || lines.has(cause.line) || (cause.of !== null && lines.has(cause.of));
};

/**
 * Parts the causes by what the answers rest on. All entries are undone together, once: where that moves nothing, none is tried
 * alone. Then those are that no answer rests on: where that moves nothing, they are out; where it does, they stay among those
 * that halving goes through.
 */
export const sortSuspects = async (
  all: readonly Cause[],
  answers: readonly Answer[],
  differences: readonly Difference[],
  replay: Replay,
): Promise<Suspects> => {
  const near = differences.filter((each) => !isFoundAhead(each));
  const told = entriesIn(all);
  if (near.length > 0 && !(await isAnyMoved(near, told, replay)))
    return { all, likely: all.filter((cause) => !told.includes(cause)) };
  const matters = restsOn(answers);
  const likely = all.filter(matters);
  const entries = entriesIn(likely).slice(0, mostTried);
  const tried = likely.filter((cause) => cause.kind !== 'entry' || entries.includes(cause));
  const others = all.filter((cause) => !matters(cause));
  if (others.length === 0 || near.length === 0) return { all, likely: tried };
  return (await isAnyMoved(near, others, replay))
    ? { all, likely: others.length > mostTried ? tried : all }
    : { all: likely, likely: tried };
};
