/** What made each difference: causes are undone one at a time, then in pairs, then halved down, and the question worked out again. */
import type { Cause, Difference, Effect, Explained } from '../types.ts';
import { isFoundAhead, keyOf, type Points } from './difference.ts';
import { findSmallestSet, leaveOutNeedless } from './smallest-set.ts';
import type { Replay, Suspects } from './suspects.ts';

/** How well undoing something brings a difference back to what it was: 0 wholly and by the same rule, 1 wholly, more by how far it is off. */
const distance = (difference: Difference, before: Points, then: Points): number => {
  const value = then.get(keyOf(difference))?.value ?? null;
  if (value === difference.from) {
    if (difference.what !== 'verdict') return 0;
    const rule = keyOf({ what: 'rule', id: 'rule', group: difference.group });
    return then.get(rule)?.value === before.get(rule)?.value ? 0 : 1;
  }
  const { from } = difference;
  return typeof from === 'number' && typeof value === 'number' ? 1 + Math.abs(value - from) : Infinity;
};

const effectsOn = async (
  difference: Difference,
  before: Points,
  likely: readonly Cause[],
  replay: Replay,
): Promise<readonly Effect[]> => {
  const found: { readonly effect: Effect; readonly far: number }[] = [];
  for (const cause of likely) {
    const then = await replay([cause], isFoundAhead(difference));
    const without = then.get(keyOf(difference))?.value ?? null;
    if (without === difference.to) continue;
    const effect = { cause, without, isUndone: without === difference.from };
    found.push({ effect, far: distance(difference, before, then) });
  }
  // Sorting is stable: equally good ones stay in the order in which they were tried.
  return found
    .sort((one, other) => (one.far < other.far ? -1 : one.far > other.far ? 1 : 0))
    .map(({ effect }) => effect);
};

/** The causes to be tried one by one: entries only where all of them together say that one of them may be it. */
const worthTrying = async (
  difference: Difference,
  before: Points,
  { all, likely }: Suspects,
  replay: Replay,
): Promise<readonly Cause[]> => {
  const others = likely.filter(({ kind }) => kind !== 'entry');
  // A look ahead is too dear to be taken for each of many: there the day that went by is tried, and then halving.
  if (isFoundAhead(difference)) return others;
  const told = all.filter(({ kind }) => kind === 'entry');
  if (told.length < 2) return likely;
  const without = (await replay(told, false)).get(keyOf(difference))?.value ?? null;
  if (without === difference.to) return others;
  if (without === difference.from) return likely;
  for (const cause of others)
    if (distance(difference, before, await replay([cause], false)) === 0) return others;
  return likely;
};

/** Pairs of many suspects are too many to try: then halving has to do. */
const mostForPairs = 8;

const findPair = async (
  likely: readonly Cause[],
  isEnough: (causes: readonly Cause[]) => Promise<boolean>,
): Promise<readonly Cause[] | null> => {
  if (likely.length > mostForPairs) return null;
  for (const [at, one] of likely.entries()) {
    for (const other of likely.slice(at + 1)) if (await isEnough([one, other])) return [one, other];
  }
  return null;
};

/** Of the causes of other differences, the fewest that do for this one too; null when none do. */
const findKnown = async (
  known: readonly (readonly Cause[])[],
  isEnough: (causes: readonly Cause[]) => Promise<boolean>,
): Promise<readonly Cause[] | null> => {
  for (const causes of [...known].sort((one, other) => one.length - other.length))
    if (await isEnough(causes)) return causes;
  return null;
};

/**
 * Explains one difference; see `Explained`.
 * @param known the causes of other differences: what moved these likely moved this one too
 */
export const explainDifference = async (
  difference: Difference,
  before: Points,
  { all, likely }: Suspects,
  replay: Replay,
  known: readonly (readonly Cause[])[] = [],
): Promise<Explained> => {
  const isEnough = async (causes: readonly Cause[]): Promise<boolean> => {
    if (causes.length === 0) return false;
    const then = await replay(causes, isFoundAhead(difference));
    return (then.get(keyOf(difference))?.value ?? null) === difference.from;
  };
  const tried = await worthTrying(difference, before, { all, likely }, replay);
  const effects = await effectsOn(difference, before, tried, replay);
  const [first] = effects;
  if (first?.isUndone === true) return { ...difference, causes: [first.cause], effects };
  const start = await findKnown(known, isEnough);
  if (start === null && !(await isEnough(all))) return { ...difference, causes: [], effects };
  // Causes that alone move an amount are the likeliest to move it together.
  const ordered = [...all].sort((one, other) => rankIn(effects, one) - rankIn(effects, other));
  const found =
    start === null ? await findSmallestSet(ordered, isEnough) : await leaveOutNeedless(start, isEnough);
  const pair = found.length > 2 && difference.size === null ? await findPair(likely, isEnough) : null;
  const causes = [...(pair ?? found)].sort(
    (one, other) => rankIn(effects, one) - rankIn(effects, other) || all.indexOf(one) - all.indexOf(other),
  );
  return { ...difference, causes, effects };
};

const rankIn = (effects: readonly Effect[], cause: Cause): number => {
  const at = effects.findIndex((each) => each.cause === cause);
  return at === -1 ? effects.length : at;
};
