/** Plain states for tests of facts: only what matters is given, the rest is empty. */
import type { Group, State } from '../../engine/types.ts';

/** Fifty white chicks hatched on 1 May 2026 that came the next day, none dead. */
export const group = (given: Partial<Group> = {}): Group => ({
  name: 'whites',
  kind: 'fast',
  sexes: 'mixed',
  hatched: '2026-05-01',
  hatchHour: null,
  arrived: '2026-05-02',
  line: 1,
  boxed: 50,
  dead: 0,
  losses: [],
  weighings: [],
  whereabouts: [],
  processed: [],
  kept: [],
  ...given,
});

/** A state of 8 May 2026, with one group unless others are given. */
export const stateOf = (given: Partial<State> = {}): State => ({
  on: '2026-05-08',
  groups: [group()],
  feedings: [],
  purchases: [],
  moves: [],
  signs: [],
  weather: {},
  settings: {},
  shares: [],
  eaten: [],
  ownFigures: [],
  notes: [],
  lines: 1,
  ...given,
});
