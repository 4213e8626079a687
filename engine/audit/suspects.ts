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

/** Entries that an answer says it rests on; an undo or a correction counts with the line that it is about. */
const restsOn = (answers: readonly Answer[]): ((cause: Cause) => boolean) => {
  const steps = answers.flatMap(({ workings }) => workings);
  const lines = new Set(steps.flatMap(({ entries }) => entries.map(({ line }) => line)));
  return (cause) =>
    cause.kind !== 'entry' || lines.has(cause.line) || (cause.of !== null && lines.has(cause.of));
};

/**
 * Parts the causes by what the answers rest on. All the others are undone together, once: where that moves nothing, they are
 * out; where it does, they stay among those that halving goes through.
 */
export const sortSuspects = async (
  all: readonly Cause[],
  answers: readonly Answer[],
  differences: readonly Difference[],
  replay: Replay,
): Promise<Suspects> => {
  const matters = restsOn(answers);
  const likely = all.filter(matters);
  const entries = likely.filter(({ kind }) => kind === 'entry').slice(0, mostTried);
  const tried = likely.filter((cause) => cause.kind !== 'entry' || entries.includes(cause));
  const others = all.filter((cause) => !matters(cause));
  const near = differences.filter((each) => !isFoundAhead(each));
  if (others.length === 0 || near.length === 0) return { all, likely: tried };
  const then = await replay(others, false);
  const moved = near.some((each) => (then.get(keyOf(each))?.value ?? null) !== each.to);
  return moved ? { all, likely: others.length > mostTried ? tried : all } : { all: likely, likely: tried };
};
