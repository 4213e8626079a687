/** The flock being talked about: its engine, opened again after every writing, and who is talking when. */
import type { Day } from '../../engine/day.ts';
import type { Appended, Engine, NewEntry } from '../../engine/index.ts';
import type { Problem } from '../../engine/problem.ts';
import type { Moment, Rulebook, State } from '../../engine/types.ts';
import type { Speech } from '../say/speech.ts';
import { signTyped } from '../understand/find/currency.ts';
import type { Lexicon } from '../understand/lexicon.ts';
import type { About, Asking, Heard, KnownGroup } from '../understand/types.ts';
import type { Fetched, Wanted } from '../weather/fetch-forecast.ts';

export interface Flock {
  readonly book: Rulebook;
  readonly lexicon: Lexicon;
  readonly today: Day;
  /** Only what was written by this day is believed; null for all. */
  readonly asOf: Day | null;
  /** Whether pictures must do with ASCII characters. */
  readonly isAscii: boolean;
  /** False for the demo, and where the keeper's own file is only to be read. */
  readonly canWrite: boolean;
  /** Why the keeper's own file is only to be read and what to do about it; left out where it may be written to, and for the demo. */
  readonly readOnly?: string | undefined;
  /** What is wrong with the keeper's own rule files, which are then all left out; none where there are no such files. */
  readonly ownProblems?: readonly Problem[] | undefined;
  /** Where the rules that gave advice are kept, and the time it is given; left out where no advice is noted. */
  readonly advice?: { readonly rulesFolder: string; readonly at: string } | undefined;
  /** Fetches a forecast over the network; left out where none is to be fetched. */
  readonly fetchForecast?: ((wanted: Wanted) => Promise<Fetched>) | undefined;
  /** The ledger as it stands now. */
  engine(): Engine;
  /** The lines written in this conversation; left out where nothing can be written. */
  told?(): readonly string[];
  /** Writes entries told in one breath, stamped with time and writer; the engine is open on them afterwards. */
  record(entries: readonly NewEntry[]): Promise<Appended>;
}

export const momentOn = (flock: Flock, on: Day): Moment => ({ on, asOf: flock.asOf, lines: null });

/** A day to come is seen from today, as is the first day on which an answer turns; any other is seen from itself. */
export const askedOn = (flock: Flock, on: Day): Day | undefined =>
  on > flock.today ? flock.today : undefined;

const textSetting = (state: State, what: string): string | undefined => {
  const value = state.settings[what]?.at(-1)?.value;
  return typeof value === 'string' ? value : undefined;
};

/** Customary units unless the place is set to metric. */
export const systemOf = (state: State): 'us' | 'metric' =>
  textSetting(state, 'units-system') === 'metric' ? 'metric' : 'us';

/** The currency set; undefined where none is. */
export const currencyOf = (flock: Flock): string | undefined =>
  textSetting(flock.engine().state(momentOn(flock, flock.today)), 'currency');

/** How to put values into words for this flock; `words` may show in which money the keeper reckons who has set none. */
export const speechFor = (flock: Flock, words = ''): Speech => {
  const state = flock.engine().state(momentOn(flock, flock.today));
  return {
    book: flock.book,
    system: systemOf(state),
    currency: textSetting(state, 'currency') ?? signTyped(words) ?? '$',
    today: flock.today,
  };
};

const groupsIn = (flock: Flock, state: State): KnownGroup[] => {
  const engine = flock.engine();
  const moment = momentOn(flock, flock.today);
  return state.groups.map(({ name, kind, hatched }) => {
    const place = engine.fact('place', name, moment);
    return {
      name,
      kind,
      hatched,
      place: place === 'pen' ? 'pen' : place === 'gone' ? 'gone' : 'brooder',
      alive: Number(engine.fact('alive', name, moment) ?? 0),
    };
  });
};

/** What understanding may look at: the groups, the household's measures, and the conversation so far. */
export const aboutFor = (
  flock: Flock,
  before: Heard | null,
  asking: Asking | null,
  asked: Heard | null = null,
): About => {
  const state = flock.engine().state(momentOn(flock, flock.today));
  const measures = Object.fromEntries(
    ['bag', 'scoop', 'bucket'].flatMap((what) => {
      const kg = state.settings[what]?.at(-1)?.value;
      return typeof kg === 'number' ? [[what, { kg, stated: true }]] : [];
    }),
  );
  const bag = flock.engine().fact('bag-mass', null, momentOn(flock, flock.today));
  return {
    today: flock.today,
    groups: groupsIn(flock, state),
    system: systemOf(state),
    measures:
      typeof bag === 'number' && !('bag' in measures)
        ? { ...measures, bag: { kg: bag, stated: false } }
        : measures,
    before,
    asked,
    asking,
    book: flock.book,
  };
};
