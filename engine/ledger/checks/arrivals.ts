/** When and where each group of the ledger first arrived. */
import type { Entry } from '../../types.ts';
import { inDayOrder } from '../day-order.ts';
import { textOf } from '../kinds/take.ts';
import type { Scene } from './check.ts';

/** By group name: the arrival that counts, which is the earliest. */
export const arrivalsOf = (scene: Scene): ReadonlyMap<string, Entry> => {
  const arrivals = scene.standing.filter(({ entry }) => entry.kind === 'arrive');
  // from the latest to the earliest, so that the earliest is what stays in the map
  return new Map(
    inDayOrder(arrivals)
      .map(({ entry }) => [textOf(entry, 'group'), entry] as const)
      .reverse(),
  );
};
