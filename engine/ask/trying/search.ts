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

/** Every accepted way to add one group to a plan, best first. */
const extend = async (judge: Judge, wishes: Wishes, from: Day, plan: Plan): Promise<readonly Plan[]> => {
  const longer: (Plan & { readonly off: number })[] = [];
  for (const day of daysAfter(wishes, plan.groups)) {
    const group = judge.next(plan.groups, day);
    const groups = [...plan.groups, group];
    const { accepted, cautions } = await judge.judge(group, groups);
    const off = offAim(wishes, from, plan.groups, day);
    if (accepted) longer.push({ groups, cautions: plan.cautions + cautions, off });
  }
  return longer.sort((one, other) => one.cautions - other.cautions || one.off - other.off);
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

/** The best plan in which those placed before still stand with the last one added: it takes room from them too. */
const firstStanding = async (judge: Judge, plans: readonly Plan[]): Promise<readonly Plan[]> => {
  for (const plan of plans) {
    let stands = true;
    for (const group of plan.groups.slice(0, -1)) stands &&= (await judge.judge(group, plan.groups)).accepted;
    if (stands) return [plan];
  }
  return [];
};

/** Plans of as many groups as are wished. */
export const findPlans = async (judge: Judge, wishes: Wishes, from: Day): Promise<Found> => {
  let plans: readonly Plan[] = [{ groups: [], cautions: 0 }];
  for (let count = 0; count < wishes.groups; count += 1) {
    const longer: Plan[] = [];
    for (const plan of plans) {
      const ways = await extend(judge, wishes, from, plan);
      longer.push(...(count === 0 ? spread(ways, wishes) : await firstStanding(judge, ways)));
    }
    if (longer.length === 0) return { plans: [], stuckAfter: plans[0]?.groups ?? [] };
    plans = longer.sort((one, other) => one.cautions - other.cautions);
  }
  return { plans, stuckAfter: [] };
};
