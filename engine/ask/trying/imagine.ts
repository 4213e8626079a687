/** A group of birds that are only thought of, so that "how much ice for 30 birds" has an answer before any have come. */
import type { Group, Imagines, Request, Step } from '../../types.ts';
import { type World, workingsOn } from '../world.ts';
import { notThere, worldWith } from './not-there.ts';

/** The imagined group in its world, and what it was made of. */
export interface Imagined {
  readonly world: World;
  readonly group: string;
  readonly steps: readonly Step[];
}

/** The group that a question imagines, or null where it is not known how many birds or of what kind. */
export const imagine = (world: World, request: Request, imagines: Imagines): Imagined | null => {
  const workings = workingsOn(world, request.moment.on, request.until, request.supposing);
  const made = [imagines.birds, imagines.kind, imagines.hatched].map(
    (fact) => workings.step(fact, null).value,
  );
  const [birds, kind, hatched] = made;
  if (typeof birds !== 'number' || typeof kind !== 'string' || typeof hatched !== 'string') return null;
  const group: Group = {
    ...notThere,
    name: imagines.name,
    kind,
    hatched,
    arrived: hatched,
    boxed: birds,
  };
  return { world: worldWith(world, [group]), group: group.name, steps: workings.steps() };
};
