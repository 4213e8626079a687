/** A reading of the keeper's words → what the engine is asked. */
import { addDays, type Day } from '../../engine/day.ts';
import { known } from '../../engine/index.ts';
import type { Request, Rulebook, Supposition } from '../../engine/types.ts';
import { dimensionOf, unitOf } from '../../engine/units.ts';
import type { Reading } from '../understand/types.ts';
import { askedOn, type Flock, momentOn } from './flock.ts';
import { type Resolved, resolveSupposing } from './supposed.ts';
import { toSupposition, unitSaid, withFirstDay } from './supposed-value.ts';

/** A request with what the question itself supposes, such as "for 42 birds", and apart from it what is supposed as a what-if. */
export interface Asked extends Resolved {
  readonly request: Request;
}

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
  const fact = horizon === 'processing' || horizon === 'batch' ? 'table-day' : null;
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
  const resolved = resolveSupposing(flock, reading);
  return {
    request: {
      question: reading.topic,
      groups: reading.groups,
      moment: momentOn(flock, from),
      asked: askedOn(flock, from),
      until: reading.until ?? span ?? endOf(flock, reading.slots.horizon, reading.groups, from),
      supposing: withFirstDay(takenFromSlots(flock, reading, system)),
    },
    ...resolved,
  };
};
