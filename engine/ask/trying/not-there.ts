/** Groups that are not there, laid over the state as if they had come. */
import type { Group } from '../../types.ts';
import type { World } from '../world.ts';

/** What every such group has in common: nothing has happened to it, and no line of the ledger tells of it. */
export const notThere = {
  sexes: 'mixed',
  hatchHour: null,
  line: 0,
  dead: 0,
  losses: [],
  weighings: [],
  whereabouts: [],
  processed: [],
  kept: [],
} as const satisfies Partial<Group>;

/** The world with these groups as well. */
export const worldWith = (world: World, groups: readonly Group[]): World => ({
  ...world,
  state: { ...world.state, groups: [...world.state.groups, ...groups] },
});
