/** What is to be tried, read from the facts that a planning question names. */
import type { Day } from '../../day.ts';
import type { Request, Tries } from '../../types.ts';
import { type World, workingsOn } from '../world.ts';

export interface Wishes {
  /** Hatch days asked for, and all that may be tried instead. */
  readonly days: readonly Day[];
  readonly beyond: readonly Day[];
  /** Kinds in turn. */
  readonly kinds: readonly string[];
  /** Chicks of each group. */
  readonly birds: number;
  readonly groups: number;
  /** Days between hatch and arrival. */
  readonly travel: number;
  readonly latestFirst: boolean;
  /** Days that one group lasts: the next is wanted when it is used up. */
  readonly lasts: number;
  /** Days by which plans must lie apart to be worth telling apart. */
  readonly apart: number;
  /** How many plans are told. */
  readonly most: number;
}

/** Reads them at the moment asked about. */
export const wishesOf = (world: World, request: Request, tries: Tries): Wishes => {
  const workings = workingsOn(world, request.moment.on, request.until, request.supposing);
  const text = (fact: string): string => String(workings.step(fact, null).value ?? '');
  const number = (fact: string): number => Number(workings.step(fact, null).value ?? 0);
  const list = (fact: string): readonly string[] =>
    text(fact)
      .split(' ')
      .filter((each) => each !== '');
  return {
    days: list(tries.days),
    beyond: list(tries.beyond),
    kinds: list(tries.kinds),
    birds: number(tries.birds),
    groups: Math.max(1, number(tries.groups)),
    travel: number(tries.travel),
    latestFirst: text(tries.aim) === 'late',
    lasts: number(tries.lasts),
    apart: number(tries.apart),
    most: number(tries.most),
  };
};
