/** How a group stood on an earlier day: birds alive and whether they lived out, from its own entries. */
import type { Day } from '../day.ts';
import type { Group } from '../types.ts';

/** Birds alive at the end of a day; 0 before they arrived. */
export const aliveOn = (group: Group, day: Day): number =>
  day < group.arrived
    ? 0
    : [...group.losses, ...group.processed]
        .filter((each) => each.on <= day)
        .reduce((left, each) => left - each.count, group.boxed - group.dead);

/** The day of the entry by which all of them were gone; undefined while there are any. */
export const goneOn = (group: Group): Day | undefined => {
  const gone = [...group.losses, ...group.processed].map(({ on }) => on).sort();
  return gone.find((on) => aliveOn(group, on) <= 0);
};

/** Whether they lived in a pen, nights included, on a day. */
export const livedOutOn = (group: Group, day: Day): boolean => {
  const last = group.whereabouts.findLast((each) => each.on <= day);
  return last !== undefined && last.place === 'pen' && !last.daysOnly;
};
