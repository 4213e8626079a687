/** Works facts out on demand, each once, and keeps the tree of what every value was made of. */
import type { Day } from '../day.ts';
import type { SortKeys } from '../rulebook/figures.ts';
import type { Missing, Rulebook, State, Step, Supposition, Value } from '../types.ts';
import { fromBase } from '../units.ts';
import type { Fact } from './define.ts';
import { type FigureInBase, openFigures } from './look-up.ts';
import type { Memory } from './memory.ts';
import { type Draft, readerFor } from './reader.ts';
import { noteNothing, noteReads } from './reads.ts';
import { rememberViews, type See } from './views.ts';

export interface Setup {
  readonly state: State;
  readonly book: Rulebook;
  readonly facts: ReadonlyMap<string, Fact>;
  /** The day to work the facts out for. */
  readonly on: Day;
  readonly until: Day | null;
  readonly supposing: readonly Supposition[];
  /** Groups named in the question. */
  readonly named?: readonly string[] | undefined;
  /** Sorts the keys of tables; one that remembers saves a look ahead from sorting them every day. */
  readonly sortKeys?: SortKeys | undefined;
  /** Makes and keeps what facts want to see of the state; one that lasts serves all moments of a ledger. */
  readonly see?: See | undefined;
  /** Facts worked out for other moments, to be used again where nothing that they looked at differs. */
  readonly memory?: Memory | undefined;
}

export interface Workings {
  /** The fact's step; `group` is ignored for a fact of the flock. */
  step(fact: string, group: string | null): Step;
  /** A figure entered by its own axes for a group; undefined where an axis is unknown or the table has nothing. */
  figure(id: string, group: string | null): FigureInBase | undefined;
  /** All steps so far, in the order in which they were finished. */
  steps(): readonly Step[];
}

const keyOf = (fact: string, group: string | null): string => (group === null ? fact : `${fact}\0${group}`);

/** Prepares the workings of one moment. Nothing is computed until it is asked for. */
export const openWorkings = (given: Setup): Workings => {
  const see = given.see ?? rememberViews();
  const setup = { ...given, see };
  const { book, facts, supposing, memory } = setup;
  const reads = memory === undefined ? noteNothing(setup) : noteReads(setup);
  const remembered = memory?.around(setup);
  const done = new Map<string, Step>();
  const underway = new Set<string>();
  const supposedFact = (id: string, group: string | null) =>
    supposing.find(
      ({ what, group: of }) =>
        'fact' in what && what.fact === id && (of === undefined || group === null || of === group),
    );
  const lookUp = openFigures(setup);

  /** The axis values of a figure for a group, in the axes' units; undefined when one of them is unknown. */
  const axesOf = (id: string, group: string | null): Value[] | undefined => {
    const axes = book.figures[id]?.by ?? [];
    const at: Value[] = [];
    for (const axis of axes) {
      const value = step(axis.fact, group).value;
      if (value === null) return undefined;
      at.push(
        typeof value === 'number' && axis.unit !== null ? fromBase(book.units, value, axis.unit) : value,
      );
    }
    return at;
  };
  const figure = (id: string, group: string | null, at?: readonly Value[]): FigureInBase | undefined => {
    reads.figure(id);
    const axes = at ?? axesOf(id, group);
    return axes === undefined ? undefined : lookUp(id, axes, group);
  };

  const work = (fact: Fact, group: string | null): Step => {
    const supposed = supposedFact(fact.id, group);
    const draft: Draft = { facts: [], figures: [], entries: [], assumed: [] };
    const blank = { fact: fact.id, group, unit: fact.unit, ...draft };
    if (supposed !== undefined && !supposed.adds && supposed.times !== true) {
      return { ...blank, value: supposed.value, missing: [], supposed: true };
    }
    const missing: Missing[] = [];
    const add = (more: readonly Missing[]): void => {
      for (const each of more) {
        if (!missing.some((have) => have.fact === each.fact && have.group === each.group)) missing.push(each);
      }
    };
    for (const id of fact.needs) {
      const need = step(id, group);
      draft.facts.push({ fact: id, group: need.group });
      if (need.value === null) add(need.missing);
    }
    if (missing.length > 0) return { ...blank, value: null, missing, supposed: false };
    const value = fact.compute(readerFor(setup, { reads, see, step, figure }, fact, group, draft));
    if (value === undefined || Number.isNaN(value)) {
      return { ...blank, value: null, missing: [{ fact: fact.id, group }], supposed: false };
    }
    if (supposed !== undefined) {
      const [by, now] = [Number(supposed.value), Number(value)];
      // Half of 25 birds are 13: what is only counted whole stays whole.
      const isWhole = book.units.byId[fact.unit ?? '']?.decimals === 0;
      const share = isWhole ? Math.round(now * by) : now * by;
      // No more birds can be taken away than there are; only temperatures go on below their zero.
      const sum =
        now >= 0 && fact.unit !== book.units.base.temperature?.id ? Math.max(0, now + by) : now + by;
      return { ...blank, value: supposed.adds ? sum : share, missing: [], supposed: true };
    }
    return { ...blank, value, missing: [], supposed: false };
  };

  /** A step from memory, or else worked out and kept there. What is supposed itself is not read from anything. */
  const recalled = (fact: Fact, group: string | null, key: string): Step => {
    if (remembered === undefined || supposedFact(fact.id, group) !== undefined) return work(fact, group);
    const old = reads.unnoted(() => remembered.recall(key, setup, step));
    if (old !== undefined) return old;
    const { done: found, seen } = reads.during(() => work(fact, group));
    remembered.keep(key, found, seen);
    return found;
  };

  const step = (id: string, of: string | null): Step => {
    const fact = facts.get(id);
    if (fact === undefined) throw new Error(`no such fact: ${id}`);
    const group = fact.per === 'flock' ? null : of;
    const key = keyOf(id, group);
    const known = done.get(key);
    if (known !== undefined) {
      reads.step(known);
      return known;
    }
    if (underway.has(key)) throw new Error(`fact ${id} needs itself`);
    underway.add(key);
    const found = recalled(fact, group, key);
    underway.delete(key);
    done.set(key, found);
    reads.step(found);
    return found;
  };

  return {
    step,
    figure,
    steps: () => [...done.values()],
  };
};
