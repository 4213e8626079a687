/** What the ledger tells of the pens: groups that come out or go home, moves, groups put together or parted. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import type { FromEntry, Group, PenMove, State } from '../../types.ts';
import type { Reader } from '../define.ts';
import { aliveOn } from '../past.ts';

/** Any fixed day will do: only spans between days count. */
const firstDay: Day = '2000-01-01';
export const toTime = (day: Day): number => daysBetween(firstDay, day);
export const toDay = (time: number): Day => addDays(firstDay, time);

export type Happening = FromEntry &
  (
    | { readonly is: 'out' | 'home'; readonly group: string }
    | { readonly is: 'move'; readonly move: PenMove }
    | { readonly is: 'mixed' | 'parted' }
  );

/** The number of a strip named `strip 3` or `lane c`; null where none is in the name. */
export const stripNumber = (name: string | null): number | null => {
  const [, digits, letter] = /(\d+)|\b([a-z])$/i.exec(name ?? '') ?? [];
  if (digits !== undefined) return Number(digits);
  return letter === undefined ? null : letter.toLowerCase().charCodeAt(0) - 'a'.charCodeAt(0) + 1;
};

/** The entry by which the last bird of a group was gone. */
const goneBy = (group: Group): readonly FromEntry[] => {
  const going = [...group.losses, ...group.processed].sort((a, b) => (a.on < b.on ? -1 : 1));
  const last = going.find((each) => aliveOn(group, each.on) <= 0);
  return last === undefined ? [] : [last];
};

/** All that is on record of the pens, in order. */
const happeningsIn = (
  groups: State['groups'],
  penMoves: State['moves'],
  signsSeen: State['signs'],
): readonly Happening[] => {
  const ofGroups = groups.flatMap((group): Happening[] => [
    ...group.whereabouts.map(
      ({ on, line, place, daysOnly }): Happening => ({
        on,
        line,
        group: group.name,
        is: place === 'pen' && !daysOnly ? 'out' : 'home',
      }),
    ),
    ...goneBy(group).map(({ on, line }): Happening => ({ on, line, group: group.name, is: 'home' })),
  ]);
  const moves = penMoves.map((move): Happening => ({ on: move.on, line: move.line, is: 'move', move }));
  const signs = signsSeen.flatMap(({ on, line, sign }): Happening[] =>
    sign === 'mixed' || sign === 'parted' ? [{ on, line, is: sign }] : [],
  );
  return [...ofGroups, ...moves, ...signs].sort((a, b) =>
    a.on === b.on ? a.line - b.line : a.on < b.on ? -1 : 1,
  );
};

/** All that has happened to the pens up to the day asked about, in order. */
export const happeningsUntil = (read: Reader): readonly Happening[] => {
  const { groups, moves, signs } = read.state;
  const all = read.see(happeningsIn, groups, moves, signs);
  // Nothing is on record beyond the day on which most facts look: then the list is the same one every time.
  return (all.at(-1)?.on ?? '') <= read.on ? all : all.filter((each) => each.on <= read.on);
};
