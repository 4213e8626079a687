/**
 * Searches hatch days for one group after another. Fewest cautions come first, then nearness to where the group is
 * wanted; the first group sets plans apart, and every later one takes the best place that leaves the others standing.
 */
import { addDays, type Day, daysBetween } from '../../day.ts';
import type { Group } from '../../types.ts';
import type { Judge } from './judge.ts';
import type { Wishes } from './wishes.ts';

export interface Plan {
  readonly groups: readonly Group[];
  readonly cautions: number;
}

export interface Found {
  /** Best first; empty when some group has no place in any. */
  readonly plans: readonly Plan[];
  /** The groups of the best plan before the one that found no place. */
  readonly stuckAfter: readonly Group[];
}

/** How far a day lies from where the next group is wanted: when the one before is used up, else early or late as wished. */
export const offAim = (wishes: Wishes, from: Day, before: readonly Group[], day: Day): number => {
  const last = before.at(-1);
  if (last !== undefined) return Math.abs(daysBetween(addDays(last.hatched, wishes.lasts), day));
  return wishes.latestFirst ? -daysBetween(from, day) : daysBetween(from, day);
};

/** The days on which the next group may hatch. */
export const daysAfter = (wishes: Wishes, before: readonly Group[]): readonly Day[] => {
  const last = before.at(-1);
  return last === undefined ? wishes.days : wishes.beyond.filter((day) => day > last.hatched);
};

interface Way extends Plan {
  readonly off: number;
}

const better = (one: Way, other: Way): number => one.cautions - other.cautions || one.off - other.off;

/** A plan with one more group, hatched on a day; null where the rules refuse it. */
const withOneOn = async (
  judge: Judge,
  wishes: Wishes,
  from: Day,
  plan: Plan,
  day: Day,
): Promise<Way | null> => {
  const group = judge.next(plan.groups, day);
  const groups = [...plan.groups, group];
  const { accepted, cautions } = await judge.judge(group, groups);
  const off = offAim(wishes, from, plan.groups, day);
  return accepted ? { groups, cautions: plan.cautions + cautions, off } : null;
};

/** Every accepted way to place a first group, best first. */
const waysToBegin = async (judge: Judge, wishes: Wishes, from: Day, plan: Plan): Promise<readonly Way[]> => {
  const ways: Way[] = [];
  for (const day of daysAfter(wishes, plan.groups)) {
    const way = await withOneOn(judge, wishes, from, plan, day);
    if (way !== null) ways.push(way);
  }
  return ways.sort(better);
};

/** Plans whose first groups hatch far enough apart. */
const spread = (plans: readonly Plan[], { most, apart }: Wishes): readonly Plan[] => {
  const hatch = (plan: Plan): Day => plan.groups[0]?.hatched ?? '';
  const chosen: Plan[] = [];
  for (const plan of plans) {
    if (chosen.length >= most) break;
    if (chosen.every((other) => Math.abs(daysBetween(hatch(other), hatch(plan))) >= apart)) chosen.push(plan);
  }
  return chosen;
};

/** Whether those placed before still stand with the last one added: it takes room from them too. */
const stands = async (judge: Judge, { groups }: Plan): Promise<boolean> => {
  for (const group of groups.slice(0, -1)) if (!(await judge.judge(group, groups)).accepted) return false;
  return true;
};

/**
 * The best way to go on with a plan, or none. Days are tried from the nearest to where the group is wanted: the first
 * without a caution that leaves the others standing is the best there is, and no further day need be tried.
 */
const bestWayOn = async (judge: Judge, wishes: Wishes, from: Day, plan: Plan): Promise<readonly Plan[]> => {
  const off = (day: Day): number => offAim(wishes, from, plan.groups, day);
  const nearestFirst = [...daysAfter(wishes, plan.groups)].sort((one, other) => off(one) - off(other));
  const warned: Way[] = [];
  for (const day of nearestFirst) {
    const way = await withOneOn(judge, wishes, from, plan, day);
    if (way === null) continue;
    if (way.cautions > plan.cautions) warned.push(way);
    else if (await stands(judge, way)) return [way];
  }
  for (const way of warned.sort(better)) if (await stands(judge, way)) return [way];
  return [];
};

/** Plans of as many groups as are wished. */
export const findPlans = async (judge: Judge, wishes: Wishes, from: Day): Promise<Found> => {
  let plans: readonly Plan[] = [{ groups: [], cautions: 0 }];
  for (let count = 0; count < wishes.groups; count += 1) {
    const longer: Plan[] = [];
    for (const plan of plans) {
      const ways =
        count === 0
          ? spread(await waysToBegin(judge, wishes, from, plan), wishes)
          : await bestWayOn(judge, wishes, from, plan);
      longer.push(...ways);
    }
    if (longer.length === 0) return { plans: [], stuckAfter: plans[0]?.groups ?? [] };
    plans = longer.sort((one, other) => one.cautions - other.cautions);
  }
  return { plans, stuckAfter: [] };
};
