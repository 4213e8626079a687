/** A reading of the keeper's words → what the engine is asked. */
import { addDays, type Day } from '../../engine/day.ts';
import { known } from '../../engine/index.ts';
import type { Request, Rulebook, Supposition } from '../../engine/types.ts';
import { baseUnitOf, dimensionOf, shownUnit, toBase, unitOf } from '../../engine/units.ts';
import type { Reading, Supposing } from '../understand/types.ts';
import { type Flock, momentOn } from './flock.ts';

export interface Asked {
  readonly request: Request;
  /** Suppositions that the engine has no fact or figure for. */
  readonly leftOut: readonly Supposing[];
}

/** A unit by its id or by a word for it, if it measures a dimension. */
const unitSaid = (book: Rulebook, said: string | null, dimension: string): string | undefined => {
  const word = said?.toLowerCase() ?? '';
  return book.units.list.find(
    (unit) => unit.dimension === dimension && (unit.id === said || unit.words.includes(word)),
  )?.id;
};

/** The unit that was said, if it measures what the fact is; else the one it is shown in here. Null for days and choices. */
const unitFor = (
  book: Rulebook,
  { unit, fact }: Supposing,
  of: string,
  system: 'us' | 'metric',
): string | null => {
  if (unitOf(book.units, of) === undefined) return null;
  const own = book.facts[fact ?? '']?.shown?.[system];
  return unitSaid(book, unit, dimensionOf(book.units, of)) ?? own ?? shownUnit(book.units, of, system);
};

/** A supposed number in base units; a change of temperature is a difference, not a point on the scale. */
const inBase = (
  book: Rulebook,
  supposing: Supposing,
  of: string | null,
  system: 'us' | 'metric',
): number | string => {
  const { value, adds } = supposing;
  if (typeof value !== 'number' || of === null) return value;
  const from = unitFor(book, supposing, of, system);
  if (from === null) return value;
  const base = toBase(book.units, { value, unit: from });
  return adds ? base - toBase(book.units, { value: 0, unit: from }) : base;
};

const toSupposition = (book: Rulebook, supposing: Supposing, system: 'us' | 'metric'): Supposition | null => {
  const fact = known.facts.find((each) => each.id === supposing.fact);
  if (fact !== undefined) {
    return {
      what: { fact: fact.id },
      value: inBase(book, supposing, fact.unit, system),
      adds: supposing.adds,
    };
  }
  const figure = supposing.figure === undefined ? undefined : book.figures[supposing.figure];
  if (figure === undefined) return null;
  const base = baseUnitOf(book.units, dimensionOf(book.units, figure.unit)).id;
  return { what: { figure: figure.id }, value: inBase(book, supposing, base, system), adds: supposing.adds };
};

/** What is supposed of the coming days is supposed of the first of them too. */
const firstOf: Readonly<Record<string, string>> = {
  'night-low': 'tonight-low',
  'rain-soon': 'rain-today',
  'wind-soon': 'wind-today',
};

const withFirstDay = (supposed: readonly Supposition[]): readonly Supposition[] => [
  ...supposed,
  ...supposed.flatMap((each): Supposition[] => {
    const first = 'fact' in each.what ? firstOf[each.what.fact] : undefined;
    const isSaid = supposed.some((other) => 'fact' in other.what && other.what.fact === first);
    return first === undefined || isSaid ? [] : [{ ...each, what: { fact: first } }];
  }),
];

/** A day that the question is about and not asked for: the question itself stays today's. */
const dayWanted = 'day-wanted';

/** What the words say under a name that `takes` knows: a slot, the day, all signs or causes mentioned, or that an idea is there at all. */
const saidUnder = (reading: Reading, name: string): unknown => {
  if (name === 'signs' || name === 'causes') return reading.mentions[name].join(' ') || undefined;
  if (name.startsWith('idea-'))
    return reading.mentions.ideas.includes(name.slice('idea-'.length)) ? 'yes' : undefined;
  return name === 'on' || name === dayWanted ? reading.on : reading.slots[name];
};

/** An amount in pounds is no share of protein: only one that measures what the fact is stands for it. */
const isMeasuredIn = (book: Rulebook, fact: string, unit: unknown): boolean => {
  const of = known.facts.find((each) => each.id === fact)?.unit ?? null;
  if (typeof unit !== 'string' || of === null || unitOf(book.units, of) === undefined) return true;
  return unitSaid(book, unit, dimensionOf(book.units, of)) !== undefined;
};

/** What is said in the question and stands for facts, such as "for 42 birds" or "with its head gone", as suppositions. */
const takenFromSlots = (flock: Flock, reading: Reading, system: 'us' | 'metric'): Supposition[] => {
  const takes = flock.book.questions[reading.topic]?.takes ?? {};
  const supposed = new Set(reading.supposing.map((each) => each.fact));
  return Object.entries(takes).flatMap(([slot, fact]) => {
    const value = saidUnder(reading, slot);
    if ((typeof value !== 'number' && typeof value !== 'string') || supposed.has(fact)) return [];
    const unit = reading.slots[`${slot}-unit`] ?? reading.slots.unit;
    if (slot === 'amount' && !isMeasuredIn(flock.book, fact, unit)) return [];
    const said = { what: slot, fact, value, unit: typeof unit === 'string' ? unit : null, adds: false };
    return toSupposition(flock.book, said, system) ?? [];
  });
};

/** The end of a span that was named by what happens then: processing, going out. */
const endOf = (flock: Flock, horizon: unknown, groups: readonly string[], on: Day): Day | null => {
  if (typeof horizon !== 'string') return null;
  const engine = flock.engine();
  const moment = momentOn(flock, on);
  const names = groups.length > 0 ? groups : engine.state(moment).groups.map((group) => group.name);
  const fact = horizon === 'processing' || horizon === 'batch' ? 'ready-on' : null;
  if (fact === null) return null;
  const ends = names
    .filter((name) => engine.fact('has-birds', name, moment) === 'yes')
    .flatMap((name) => {
      const day = engine.fact(fact, name, moment);
      return typeof day === 'string' && day > on ? [addDays(day, -1)] : [];
    });
  return ends.sort().at(-1) ?? null;
};

/** Builds the request. `on` is the day asked about when the words name none. */
export const toRequest = (flock: Flock, reading: Reading, on: Day, system: 'us' | 'metric'): Asked => {
  const wantsDay = flock.book.questions[reading.topic]?.takes[dayWanted] !== undefined;
  const from = wantsDay ? on : (reading.on ?? on);
  const span = reading.days !== null && reading.days > 0 ? addDays(from, reading.days - 1) : null;
  const supposed = reading.supposing.map((each) => ({ each, as: toSupposition(flock.book, each, system) }));
  return {
    request: {
      question: reading.topic,
      groups: reading.groups,
      moment: momentOn(flock, from),
      until: reading.until ?? span ?? endOf(flock, reading.slots.horizon, reading.groups, from),
      supposing: withFirstDay([
        ...supposed.flatMap(({ as }) => as ?? []),
        ...takenFromSlots(flock, reading, system),
      ]),
    },
    leftOut: supposed.flatMap(({ each, as }) => (as === null ? [each] : [])),
  };
};
