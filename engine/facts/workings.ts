/** Works facts out on demand, each once, and keeps the tree of what every value was made of. */
import type { Day } from '../day.ts';
import { keysOf, namesOf, type SortKeys } from '../rulebook/figures.ts';
import type {
  Assumed,
  Figure,
  FigureUse,
  FromEntry,
  Group,
  Missing,
  Rulebook,
  State,
  Step,
  Supposition,
  Value,
} from '../types.ts';
import { fromBase } from '../units.ts';
import type { Fact, Reader } from './define.ts';
import { type FigureInBase, figureNamed, openFigures } from './look-up.ts';

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
}

export interface Workings {
  /** The fact's step; `group` is ignored for a fact of the flock. */
  step(fact: string, group: string | null): Step;
  /** A figure entered by its own axes for a group; undefined where an axis is unknown or the table has nothing. */
  figure(id: string, group: string | null): FigureInBase | undefined;
  /** All steps so far, in the order in which they were finished. */
  steps(): readonly Step[];
}

interface Draft {
  readonly facts: { fact: string; group: string | null }[];
  readonly figures: FigureUse[];
  readonly entries: FromEntry[];
  readonly assumed: Assumed[];
}

const keyOf = (fact: string, group: string | null): string => (group === null ? fact : `${fact}\0${group}`);

/** Prepares the workings of one moment. Nothing is computed until it is asked for. */
export const openWorkings = (setup: Setup): Workings => {
  const { state, book, facts, on, until, supposing, sortKeys, named = [] } = setup;
  const done = new Map<string, Step>();
  const underway = new Set<string>();
  const groupNamed = (name: string | null): Group | undefined =>
    state.groups.find((group) => group.name === name);
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

  const readerFor = (fact: Fact, group: string | null, draft: Draft): Reader => {
    const declared = (list: readonly string[], id: string): void => {
      if (!list.includes(id)) throw new Error(`fact ${fact.id} reads ${id} without declaring it`);
    };
    const use = (id: string, of: string | null): Step => {
      const per = facts.get(id)?.per === 'flock' ? null : of;
      if (!draft.facts.some((each) => each.fact === id && each.group === per))
        draft.facts.push({ fact: id, group: per });
      return step(id, of);
    };
    const needed = (id: string): Value => {
      declared(fact.needs, id);
      const { value } = use(id, group);
      if (value === null) throw new Error(`fact ${id} is unknown although ${fact.id} was worked out`);
      return value;
    };
    const record = (found: FigureUse): void => {
      if (!draft.figures.some((each) => each.id === found.id && each.value === found.value))
        draft.figures.push(found);
    };
    const look = (id: string, at: readonly Value[] | undefined): number | undefined => {
      declared(fact.figures, id);
      const axes = at ?? axesOf(id, group);
      const found = axes === undefined ? undefined : lookUp(id, axes, group);
      if (found !== undefined) record(found.use);
      return found?.base;
    };
    const tableOf = (id: string): Figure => {
      declared(fact.figures, id);
      return figureNamed(book, id);
    };
    const tableKeys = (id: string, branch: readonly string[] = []): readonly number[] =>
      keysOf(tableOf(id), on, branch, sortKeys);
    return {
      state,
      on,
      asked: state.on,
      until,
      named,
      get group() {
        const found = groupNamed(group);
        if (found === undefined) throw new Error(`fact ${fact.id} asked for a group that there is not`);
        return found;
      },
      number: (id) => Number(needed(id)),
      yes: (id) => needed(id) === true,
      text: (id) => String(needed(id)),
      maybe: (id) => {
        declared(fact.wants, id);
        return use(id, group).value ?? undefined;
      },
      each: (id) => {
        declared(fact.each, id);
        return state.groups
          .filter((each) => each.arrived <= on)
          .map((each) => ({ group: each, value: use(id, each.name).value ?? undefined }));
      },
      figure: (id, at) => {
        const found = look(id, at);
        if (found === undefined)
          throw new Error(`figure ${id} has nothing for ${JSON.stringify(at ?? 'its axes')} in ${fact.id}`);
        return found;
      },
      maybeFigure: look,
      along: (id, branch = []) => {
        declared(fact.figures, id);
        let recordedOwn: boolean | undefined;
        return (x) => {
          const found = lookUp(id, [...branch, x], group);
          if (found === undefined) throw new Error(`figure ${id} has nothing at ${branch.join('/')} ${x}`);
          if (recordedOwn === undefined || (found.use.own && !recordedOwn)) record(found.use);
          recordedOwn = recordedOwn === true || found.use.own;
          return found.base;
        };
      },
      keysOf: tableKeys,
      namesOf: (id) => namesOf(tableOf(id), on),
      spanOf: (id, branch) => {
        const keys = tableKeys(id, branch);
        return [keys[0] ?? 0, keys.at(-1) ?? 0];
      },
      causeClass: (cause) => book.words.causes[cause]?.class ?? 'other',
      signClass: (sign) => book.words.signs[sign]?.class ?? 'other',
      from: (...entries) => {
        for (const { on: day, line } of entries) {
          if (!draft.entries.some((each) => each.line === line)) draft.entries.push({ on: day, line });
        }
      },
      assume: (id, values = {}) => {
        if (!Object.hasOwn(book.assumptions, id))
          throw new Error(`fact ${fact.id} assumes ${id}, which has no words`);
        draft.assumed.push({ id, group: fact.per === 'group' ? group : null, values });
      },
    };
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
    const value = fact.compute(readerFor(fact, group, draft));
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

  const step = (id: string, of: string | null): Step => {
    const fact = facts.get(id);
    if (fact === undefined) throw new Error(`no such fact: ${id}`);
    const group = fact.per === 'flock' ? null : of;
    const key = keyOf(id, group);
    const known = done.get(key);
    if (known !== undefined) return known;
    if (underway.has(key)) throw new Error(`fact ${id} needs itself`);
    underway.add(key);
    const found = work(fact, group);
    underway.delete(key);
    done.set(key, found);
    return found;
  };

  return {
    step,
    figure: (id, group) => {
      const at = axesOf(id, group);
      return at === undefined ? undefined : lookUp(id, at, group);
    },
    steps: () => [...done.values()],
  };
};
