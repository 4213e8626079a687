/** What a derived fact stands on, and how far each of those would have to change to bring it to a value: tried, never solved for. */
import type { Workings } from '../../facts/workings.ts';
import type { Change, Step, Value } from '../../types.ts';
import type { Trial } from '../turns.ts';
import { isDirect } from './candidates.ts';

/** How deep below a fact its ground is looked for, how many are tried, how far beside what each is now, and how finely. Limits of cost. */
const limits = { depth: 2, most: 3, share: 4, fineness: 64 };

export interface Lever {
  /** The workings with one fact supposed. */
  with(trial: Trial): Workings;
  /** The smallest change of a fact worth speaking of, in base units. */
  step(fact: string, unit: string | null): number;
  isFixed(fact: string): boolean;
  /** The next value away from what is there that can be said in full: what is told must be what was tried. */
  sayable(ground: Step, value: number, isMore: boolean): number;
  /** Whether it may fall below zero, as a temperature may. */
  isBelowZero(unit: string | null): boolean;
}

/** The recorded facts below a step that somebody could change, nearest first, each once. */
const groundsOf = (workings: Workings, top: Step, lever: Lever): readonly Step[] => {
  const found = new Map<string, Step>();
  let level: readonly Step[] = [top];
  for (let depth = 0; depth < limits.depth; depth += 1) {
    const below = level.flatMap((step) => step.facts.map(({ fact, group }) => workings.step(fact, group)));
    const direct = below.filter(isDirect);
    for (const step of direct) {
      if (typeof step.value === 'number' && !lever.isFixed(step.fact) && !found.has(step.fact))
        found.set(step.fact, step);
    }
    level = below.filter((step) => !isDirect(step));
  }
  return [...found.values()].slice(0, limits.most);
};

/** The fewest steps one way at which something is reached, when it is at so many: halved down to one step, or to a small part of the way. */
const fewestSteps = (most: number, isReachedAfter: (steps: number) => boolean): number => {
  let [few, many] = [0, most];
  while (many - few > Math.max(1, many / limits.fineness)) {
    const middle = Math.floor((few + many) / 2);
    if (isReachedAfter(middle)) many = middle;
    else few = middle;
  }
  return many;
};

/** The nearest value of a ground at which the fact is reached; undefined where it is not reached far off either way. */
const nearest = (ground: Step, lever: Lever, isReached: (value: number) => boolean): number | undefined => {
  const from = Number(ground.value);
  const step = lever.step(ground.fact, ground.unit);
  const lowest = lever.isBelowZero(ground.unit) ? Number.NEGATIVE_INFINITY : 0;
  const most = Math.ceil((Math.max(Math.abs(from), step) * limits.share) / step);
  const ways = [1, -1].flatMap((sign) => {
    // Short of nothing: of no birds at all there is nothing to work out.
    const room = sign < 0 ? Math.min(most, Math.ceil((from - lowest) / step) - 1) : most;
    const isReachedAfter = (steps: number): boolean => isReached(from + sign * steps * step);
    return room > 0 && isReachedAfter(room) ? [{ sign, steps: fewestSteps(room, isReachedAfter) }] : [];
  });
  const [best] = ways.sort((one, other) => one.steps - other.steps);
  return best === undefined
    ? undefined
    : lever.sayable(ground, from + best.sign * best.steps * step, best.sign > 0);
};

/** Changes of what a derived fact stands on, each by itself bringing the fact to a value or just past it. */
export const leversOf = (
  workings: Workings,
  group: string | null,
  fact: string,
  to: Value,
  lever: Lever,
): readonly Change[] => {
  const top = workings.step(fact, group);
  const from = top.value;
  if (typeof from !== 'number' || typeof to !== 'number') return [];
  const isReached =
    (ground: Step) =>
    (value: number): boolean => {
      const now = lever.with({ fact: ground.fact, group: ground.group, value }).step(fact, group).value;
      return typeof now === 'number' && (to > from ? now >= to : now <= to);
    };
  return groundsOf(workings, top, lever).flatMap((ground): readonly Change[] => {
    const value = nearest(ground, lever, isReached(ground));
    return value === undefined
      ? []
      : [{ fact: ground.fact, group: ground.group, from: ground.value, to: value, unit: ground.unit }];
  });
};
