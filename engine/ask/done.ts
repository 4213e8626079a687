/** Whether what a chore asks for is already on record for the day. */
import type { Day } from '../day.ts';
import type { FromEntry, State } from '../types.ts';

type Dated = FromEntry & { readonly group?: string | null };

const recordsOf = (state: State, kind: string, group: string | null): readonly Dated[] => {
  const own = state.groups.filter((each) => group === null || each.name === group);
  switch (kind) {
    case 'feed':
      return state.feedings;
    case 'move':
      return state.moves;
    case 'sign':
      return state.signs;
    case 'buy':
      return state.purchases;
    case 'weather':
      return Object.values(state.weather).flatMap((day) => (day.low === null ? [] : [day.low]));
    case 'weigh':
      return own.flatMap((each) => each.weighings);
    case 'out':
      return own.flatMap((each) => each.whereabouts);
    case 'process':
      return own.flatMap((each) => each.processed);
    case 'loss':
      return own.flatMap((each) => each.losses);
    default:
      return [];
  }
};

/** Whether an entry of this kind is on record for the day, for the group or for all birds together. */
export const isDone = (state: State, kind: string, group: string | null, on: Day): boolean =>
  recordsOf(state, kind, group).some(
    (each) =>
      each.on === on &&
      (group === null || each.group === undefined || each.group === null || each.group === group),
  );
