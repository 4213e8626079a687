/** Whether what a chore asks for is already on record for the day. */
import type { Day } from '../day.ts';
import type { FromEntry, State } from '../types.ts';

type Dated = FromEntry & { readonly group?: string | null };

const recordsOf = (
  state: State,
  kind: string,
  sign: string | undefined,
  group: string | null,
): readonly Dated[] => {
  const own = state.groups.filter((each) => group === null || each.name === group);
  switch (kind) {
    case 'feed':
      return state.feedings;
    case 'move':
      return state.moves;
    case 'sign':
      return sign === undefined ? state.signs : state.signs.filter((each) => each.sign === sign);
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
    case 'arrive':
      return own.map((each) => ({ on: each.arrived, line: each.line }));
    case 'loss':
      return own.flatMap((each) => each.losses);
    default:
      return [];
  }
};

/**
 * Whether an entry of this kind is on record for the day, for the group or for all birds together.
 * @param doneBy an entry kind, or `sign:` and the one sign that counts
 */
export const isDone = (state: State, doneBy: string, group: string | null, on: Day): boolean => {
  const [kind = '', sign] = doneBy.split(':');
  return recordsOf(state, kind, sign, group).some(
    (each) =>
      each.on === on &&
      (group === null || each.group === undefined || each.group === null || each.group === group),
  );
};
