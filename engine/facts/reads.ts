/** What a fact looks at while it is worked out, so that its value can serve again where all of that is the same. */
import type { Day } from '../day.ts';
import type { Group, Rulebook, State, Step } from '../types.ts';
import type { Setup } from './workings.ts';

/** One thing looked at: something that can be found in the setup of any moment, or another fact. */
export type Read =
  | {
      readonly name: string;
      readonly look: (setup: Setup) => unknown;
      /** True where only the very same thing will do: then it need not be read through to be known again. */
      readonly isItself?: boolean;
    }
  | { readonly name: string; readonly fact: string; readonly group: string | null };

/** A thing looked at, with what was found there: for a fact its step. */
export interface Seen {
  readonly read: Read;
  readonly found: unknown;
}

/** What facts are worked out from, besides figures and each other. */
export interface Around {
  readonly state: State;
  readonly on: Day;
  readonly asked: Day;
  readonly until: Day | null;
  readonly named: readonly string[];
  readonly words: Rulebook['words'];
  /** Days of which weather is on record, newest first. */
  weatherDays(): readonly Day[];
  group(name: string | null): Group | undefined;
}

/** Hands out what facts are worked out from, and keeps what was looked at, fact by fact. */
export interface Reads extends Around {
  /** That a figure was looked up, as it counts on the day. */
  figure(id: string): void;
  /** That a step was handed to whatever asked for it. */
  step(step: Step): void;
  /** Does something and tells all that was looked at meanwhile, each once, in the order in which it was. */
  during<T>(work: () => T): { readonly done: T; readonly seen: readonly Seen[] };
  /** Does something of which nothing is kept. */
  unnoted<T>(work: () => T): T;
}

const groupIn = ({ groups }: State, name: string | null): Group | undefined =>
  groups.find((group) => group.name === name);

const newestFirst = (weather: State['weather']): readonly Day[] => Object.keys(weather).sort().reverse();

const weatherDaysIn = ({ state, see }: Setup): readonly Day[] =>
  see === undefined ? newestFirst(state.weather) : see(newestFirst, state.weather);

const around = (setup: Setup): Around => {
  const { state, on, until, named = [], book } = setup;
  return {
    state,
    on,
    asked: state.on,
    until,
    named,
    words: book.words,
    weatherDays: () => weatherDaysIn(setup),
    group: (name) => groupIn(state, name),
  };
};

/** Only hands out: for the workings of one moment alone. */
export const noteNothing = (setup: Setup): Reads => ({
  ...around(setup),
  figure: () => undefined,
  step: () => undefined,
  during: (work) => ({ done: work(), seen: [] }),
  unnoted: (work) => work(),
});

const looks = {
  on: ({ on }) => on,
  asked: ({ state }) => state.on,
  until: ({ until }) => until,
  named: ({ named }) => named,
  weatherDays: weatherDaysIn,
} satisfies Readonly<Record<string, (setup: Setup) => unknown>>;

/** A figure with one value is the same on every day, and what rests on no other may serve for all of them. */
const isDated = ({ book, state }: Setup, id: string): boolean => {
  const figure = book.figures[id];
  const values = (figure?.values.length ?? 0) + (figure?.own?.published?.values.length ?? 0);
  return values > 1 || state.ownFigures.length > 0;
};

type Tell = (name: string, lookFor: () => (setup: Setup) => unknown, isItself?: boolean) => void;

/** A part of the state that is looked into by keys, such as the weather by its days: each key is a thing of its own. */
const watchedByKey = <T>(
  part: Readonly<Record<string, T>>,
  name: string,
  partIn: (setup: Setup) => Readonly<Record<string, T>>,
  tell: Tell,
): Readonly<Record<string, T>> =>
  new Proxy(part, {
    get: (of, key: string) => {
      tell(`${name} ${key}`, () => (now) => partIn(now)[key]);
      return of[key];
    },
    ownKeys: (of) => {
      tell(`keys of ${name}`, () => (now) => Object.keys(partIn(now)));
      return Reflect.ownKeys(of);
    },
  });

/** A state whose parts tell when they are looked at. */
const watched = (state: State, tell: Tell): State => {
  const byKey: Partial<State> = {
    weather: watchedByKey(state.weather, 'weather', (now) => now.state.weather, tell),
    settings: watchedByKey(state.settings, 'settings', (now) => now.state.settings, tell),
  };
  return new Proxy(state, {
    get: (of, part: keyof State) => {
      if (byKey[part] !== undefined) return byKey[part];
      tell(part, () => (now) => now.state[part]);
      return of[part];
    },
  });
};

interface Frame {
  readonly names: Set<string | Step>;
  readonly seen: Seen[];
}

/** Opens the noting for the setup of one moment. */
export const noteReads = (setup: Setup): Reads => {
  const told = around(setup);
  let frame: Frame | undefined;
  const note: Tell = (name, lookFor, isItself = false) => {
    if (frame === undefined || frame.names.has(name)) return;
    frame.names.add(name);
    const look = lookFor();
    frame.seen.push({ read: { name, look, isItself }, found: look(setup) });
  };
  const noteOne = (name: keyof typeof looks): void => note(name, () => looks[name]);
  return {
    state: watched(told.state, note),
    get on() {
      noteOne('on');
      return told.on;
    },
    get asked() {
      noteOne('asked');
      return told.asked;
    },
    get until() {
      noteOne('until');
      return told.until;
    },
    get named() {
      noteOne('named');
      return told.named;
    },
    words: told.words,
    weatherDays: () => {
      noteOne('weatherDays');
      return told.weatherDays();
    },
    group: (name) => {
      note(`group ${name}`, () => (now) => groupIn(now.state, name));
      return told.group(name);
    },
    figure: (id) => {
      const name = `figure ${id}`;
      if (frame?.names.has(name) === true) return;
      note(
        name,
        () =>
          ({ book }) =>
            book.figures[id],
        true,
      );
      if (isDated(setup, id)) noteOne('on');
    },
    step: (step) => {
      if (frame === undefined || frame.names.has(step)) return;
      frame.names.add(step);
      const { fact, group } = step;
      frame.seen.push({ read: { name: `fact ${fact} ${group}`, fact, group }, found: step });
    },
    unnoted: (work) => {
      const outer = frame;
      frame = undefined;
      try {
        return work();
      } finally {
        frame = outer;
      }
    },
    during: (work) => {
      const outer = frame;
      const own: Frame = { names: new Set(), seen: [] };
      frame = own;
      try {
        return { done: work(), seen: own.seen };
      } finally {
        frame = outer;
      }
    },
  };
};
