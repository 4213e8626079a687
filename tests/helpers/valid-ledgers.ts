/** Ledgers drawn at random in which nothing is wrong: several groups, and all that can happen to birds, feed, money and meat. */
import fc from 'fast-check';
import { addDays, type Day } from '../../engine/day.ts';
import { type Draft, type DrawnEvent, happenings, of, type Standing, tell } from './happenings.ts';

export type { Standing } from './happenings.ts';

const first: Day = '2026-04-01';
/** Days over which things happen. */
const season = 150;

interface DrawnGroup {
  readonly count: number;
  readonly dead: number;
  readonly bird: string;
  readonly after: number;
}

export interface ValidLedger {
  readonly text: string;
  /** The day after the last entry. */
  readonly on: Day;
  readonly groups: readonly string[];
  /** In file order, told by the one who drew them and not by the program. */
  readonly standing: readonly Standing[];
}

const names = ['whites', 'reds', 'barred'];

const drawnGroup: fc.Arbitrary<DrawnGroup> = fc.record({
  count: fc.integer({ min: 3, max: 60 }),
  dead: fc.integer({ min: 0, max: 2 }),
  bird: fc.constantFrom('fast', 'medium', 'slow'),
  after: fc.integer({ min: 0, max: 60 }),
});

const drawnEvent: fc.Arbitrary<DrawnEvent> = fc.record({
  // Feed is given and bought more often than anything else is done.
  what: fc.constantFrom(...Object.keys(happenings), 'feed', 'feed all', 'buy feed', 'buy feed'),
  after: fc.integer({ min: 3, max: season }),
  much: fc.integer({ min: 1, max: 40 }),
  which: fc.nat({ max: 11 }),
  exact: fc.boolean(),
});

const arrive = (draft: Draft, group: string, { count, dead, bird }: DrawnGroup, on: Day): void => {
  tell(draft, 'arrive', on, { group, count, dead, bird, hatched: addDays(on, -1) });
  draft.alive.set(group, count - dead);
};

/** Writes down groups as they come and all that happens, day by day; a group that comes on a day comes before all else. */
const write = (groups: readonly DrawnGroup[], events: readonly DrawnEvent[]): ValidLedger => {
  const draft: Draft = { lines: [], alive: new Map(), standing: [], frozen: 0 };
  const tellings = [
    ...groups.map((group, index) => ({
      after: group.after,
      tell: (on: Day) => arrive(draft, names[index] ?? `group ${index}`, group, on),
    })),
    ...events.map((event) => ({
      after: event.after,
      tell: (on: Day) => {
        const group = of([...draft.alive.keys()], event.which);
        if (group !== undefined) happenings[event.what]?.(draft, on, event, group);
      },
    })),
  ].sort((one, other) => one.after - other.after);
  for (const each of tellings) each.tell(addDays(first, each.after));
  return {
    text: draft.lines.map((line) => `${line}\n`).join(''),
    on: addDays(first, (tellings.at(-1)?.after ?? 0) + 1),
    groups: [...draft.alive.keys()],
    standing: draft.standing,
  };
};

/** Ledgers of one to three groups and up to so many things that happened to them. */
export const validLedgers = (most = 40): fc.Arbitrary<ValidLedger> =>
  fc
    .tuple(
      fc.array(drawnGroup, { minLength: 1, maxLength: 3 }),
      fc.array(drawnEvent, { minLength: 5, maxLength: most }),
    )
    .map(([groups, events]) => write(groups, events));

/** The standing entries of a kind. */
export const told = ({ standing }: ValidLedger, kind: string): readonly Standing[] =>
  standing.filter((each) => each.kind === kind);

/** A number of a field, summed over entries; what was not told counts for nothing. */
export const sumOf = (entries: readonly Standing[], field: string): number =>
  entries.reduce((sum, { fields }) => sum + Number(fields[field] ?? 0), 0);
