/** A small flock over the small rulebook, so that whole answers can be looked at without hanging on shipped wording. */
import type { World } from '../../engine/ask/world.ts';
import { defineFact, type Fact } from '../../engine/facts/define.ts';
import type { Request, Value } from '../../engine/types.ts';
import { smallRulebook } from './small-rulebook.ts';
import { group, stateOf } from './state-of.ts';

/** The day that is asked about. */
export const on = '2026-05-08';

/** Facts whose values are given by group; a group that is not named has none. */
const factOf = (id: string, unit: string | null, values: Readonly<Record<string, Value>>): Fact =>
  defineFact({ id, unit, compute: (read) => values[read.group.name] });

/** All facts of the small rulebook: ages by group, and the low of the night when it is told. */
export const factsOf = (ages: Readonly<Record<string, number>>, low?: number): ReadonlyMap<string, Fact> =>
  new Map(
    [
      factOf('age', 'day', ages),
      factOf('place', null, { whites: 'brooder', reds: 'brooder', blues: 'pen' }),
      defineFact({
        id: 'night-low',
        unit: 'C',
        per: 'flock',
        compute: (read) => {
          if (low === undefined) return undefined;
          read.assume('no-frost');
          read.from({ on, line: 2 });
          return low;
        },
      }),
      defineFact({
        id: 'night-floor',
        unit: 'C',
        needs: ['age'],
        figures: ['out/lowest-night'],
        compute: (read) => read.maybeFigure('out/lowest-night'),
      }),
      defineFact({ id: 'look-ahead', unit: 'day', per: 'flock', compute: () => 2 }),
    ].map((fact) => [fact.id, fact]),
  );

const groups = ['whites', 'reds', 'blues'].map((name) => group({ name }));

/** Three groups over the small rulebook, two of them in the brooder, on line 4 of the file. */
export const world = (
  facts: ReadonlyMap<string, Fact>,
  over: Readonly<Record<string, string | null>> = {},
): World => ({
  book: smallRulebook(over).book,
  facts,
  state: stateOf({ on, groups, lines: 4 }),
  problems: [],
});

/** Whether they can go out. */
export const request = (more: Partial<Request> = {}): Request => ({
  question: 'go-out',
  groups: [],
  moment: { on, asOf: null, lines: null },
  until: null,
  supposing: [],
  ...more,
});
