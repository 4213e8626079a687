/** Facts worked out before: one serves again where all that it looked at is the same, so a replay works out only what differs. */
import type { Rulebook, Step } from '../types.ts';
import type { Read, Seen } from './reads.ts';
import type { Setup } from './workings.ts';

/** Steps of facts over several moments, states and suppositions of one flock. */
export interface Memory {
  /** The part of it in which whatever any fact may look at without a word is as in this setup. */
  around(setup: Setup): Known;
}

/** Steps of facts between which only what they are noted to look at differs. */
export interface Known {
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

/** What facts look at all the time, so that noting it each time would cost more than it saves. */
interface Ground {
  readonly units: Rulebook['units'];
  readonly words: Rulebook['words'];
  /** Figures that the keeper set, and those supposed, as text. */
  readonly ownFigures: string;
  readonly supposedFigures: string;
}

const groundOf = ({ book, state, supposing }: Setup): Ground => ({
  units: book.units,
  words: book.words,
  ownFigures: JSON.stringify(state.ownFigures),
  supposedFigures: JSON.stringify(supposing.filter(({ what }) => 'figure' in what)),
});

const isSame = (one: Ground, other: Ground): boolean =>
  one.units === other.units &&
  one.words === other.words &&
  one.ownFigures === other.ownFigures &&
  one.supposedFigures === other.supposedFigures;

const rememberSteps = (): Known => {
  const ways = new Map<string, Fork | Step>();
  const signs = new WeakMap<object, unknown>();
  const firsts = new Map<string, { readonly thing: object; print?: string }>();
  const printOf = (thing: object): string => `\0${JSON.stringify(thing)}`;
  /** The first thing found at a place stands for itself and for all that say the same: most often there is no other to read it beside. */
  const madeSign = (name: string, thing: object): unknown => {
    const first = firsts.get(name);
    if (first === undefined) {
      firsts.set(name, { thing });
      return thing;
    }
    first.print ??= printOf(first.thing);
    const print = printOf(thing);
    return print === first.print ? first.thing : print;
  };
  const signOfThing = (name: string, thing: object): unknown => {
    const sign = signs.get(thing) ?? madeSign(name, thing);
    signs.set(thing, sign);
    return sign;
  };
  /** What stands for a thing found: for a fact what others are told of it. Two things with the same are the same. */
  const signOf = (read: Read, found: unknown): unknown => {
    if ('isItself' in read && read.isItself === true) return found;
    const told = isStep(read, found) ? (found.value ?? found.missing) : found;
    return typeof told === 'object' && told !== null ? signOfThing(read.name, told) : told;
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

/** Makes a memory, to be kept for one answer or one comparison of answers and no longer: it only grows. */
export const rememberFacts = (): Memory => {
  const grounds: { readonly ground: Ground; readonly known: Known }[] = [];
  return {
    around: (setup) => {
      const ground = groundOf(setup);
      const found = grounds.find((each) => isSame(each.ground, ground));
      if (found !== undefined) return found.known;
      const known = rememberSteps();
      grounds.push({ ground, known });
      return known;
    },
  };
};
