/** Facts worked out before: one serves again where all that it looked at is the same, so a replay works out only what differs. */
import type { Step } from '../types.ts';
import type { Read, Seen } from './reads.ts';
import type { Setup } from './workings.ts';

/** Steps of facts over several moments, states and suppositions of one flock. */
export interface Memory {
  /** The step that would come out again; undefined where it is not known. @param stepOf another fact as it is now */
  recall(key: string, setup: Setup, stepOf: (fact: string, group: string | null) => Step): Step | undefined;
  /** Keeps a step with all that was looked at for it, in order. */
  keep(key: string, step: Step, seen: readonly Seen[]): void;
}

/**
 * What a fact looks at next, and for everything found there the way on; at its end stands the step. A fact hangs on nothing but
 * what it looks at: where it has found the same so far, it looks at the same next.
 */
interface Fork {
  readonly read: Read;
  readonly next: Map<unknown, Fork | Step>;
}

const forkAt = ({ read }: Seen): Fork => ({ read, next: new Map() });

const isStep = (read: Read, _found: unknown): _found is Step => 'fact' in read;

/** Makes a memory, to be kept for one answer or one comparison of answers and no longer: it only grows. */
export const rememberFacts = (): Memory => {
  const ways = new Map<string, Fork | Step>();
  const prints = new WeakMap<object, string>();
  const printOf = (thing: object): string => {
    const print = prints.get(thing) ?? `\0${JSON.stringify(thing)}`;
    prints.set(thing, print);
    return print;
  };
  /** What stands for a thing found: for a fact what others are told of it. Two things with the same are the same. */
  const signOf = (read: Read, found: unknown): unknown => {
    const told = isStep(read, found) ? (found.value ?? found.missing) : found;
    return typeof told === 'object' && told !== null ? printOf(told) : told;
  };
  return {
    recall: (key, setup, stepOf) => {
      let way = ways.get(key);
      while (way !== undefined && 'next' in way) {
        const { read, next }: Fork = way;
        way = next.get(signOf(read, 'fact' in read ? stepOf(read.fact, read.group) : read.look(setup)));
      }
      return way;
    },
    keep: (key, step, seen) => {
      const [first, ...rest] = seen;
      let way = ways.get(key) ?? (first === undefined ? step : forkAt(first));
      ways.set(key, way);
      for (const [at, { read, found }] of seen.entries()) {
        if (!('next' in way) || way.read.name !== read.name)
          throw new Error(`fact ${step.fact} looked at ${read.name} and did not when all else was the same`);
        const sign = signOf(read, found);
        const ahead = rest[at];
        const on: Fork | Step = way.next.get(sign) ?? (ahead === undefined ? step : forkAt(ahead));
        way.next.set(sign, on);
        way = on;
      }
    },
  };
};
