/** What the group asked about has taken since counting began; a batch that is over has taken what it is said to have eaten. */
import type { Feeding, FromEntry } from '../../types.ts';
import type { Reader } from '../define.ts';
import { isAfter } from '../feed/bags.ts';
import { type Eater, eaterEach, eaterFigures, eatersOf } from '../feed/eater.ts';
import { byGroup } from '../views.ts';
import { batchFigures, eatenByBatch } from './batch-eaten.ts';
import { type TakenOn, takenSince } from './taken.ts';

/** What a fact declares to use `ownTaken`, beside `eaterEach` in each. */
export const ownTakenWants = ['loss-rate', 'bag-mass'];
export const ownTakenFigures = [...eaterFigures, ...batchFigures];

/** What is on record as given to a group of which no more is known; feed given to all is parted evenly where that holds of every group. */
const recordedSince = (
  read: Reader,
  eaters: readonly (Eater | undefined)[],
  start: FromEntry,
): readonly TakenOn[] => {
  const part = eaters.every((eater) => eater === undefined) ? 1 / eaters.length : 0;
  const given = read
    .see(
      byGroup<Feeding>,
      read.state.feedings,
    )(read.group.name)
    .filter((each) => isAfter(each, start));
  read.from(...given);
  return given.map(({ on, mass, group }) => ({
    on,
    mass: mass * (group === null ? part : 1),
    assumed: false,
  }));
};

/**
 * What the group asked about has taken since counting began, and whether its kind is one whose eating is known. The fact
 * declares `eaterEach`, `ownTakenWants` and `ownTakenFigures`.
 */
export const ownTaken = (
  read: Reader,
  start: FromEntry,
): { readonly known: boolean; readonly taken: readonly TakenOn[] } => {
  const eaters = eatersOf(read, eaterEach);
  const own = eaters.find((eater) => eater?.group.name === read.group.name);
  if (own === undefined) return { known: false, taken: recordedSince(read, eaters, start) };
  // Stock and cost must not differ over a batch of which all feed was counted.
  const isAllCounted = isAfter({ on: read.group.arrived, line: read.group.line }, start);
  const isOver = own.birds(read.asked) <= 0;
  const taken =
    isAllCounted && isOver ? eatenByBatch(read, own, eaters) : takenSince(read, own, eaters, start);
  return { known: true, taken };
};
