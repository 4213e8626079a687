/** What one fact may look at while it is worked out: all of it declared by the fact, and all of it put down. */
import { keysOf, namesOf } from '../rulebook/figures.ts';
import type { Assumed, Figure, FigureUse, FromEntry, Step, Value } from '../types.ts';
import type { Fact, Reader } from './define.ts';
import { type FigureInBase, figureNamed } from './look-up.ts';
import type { Reads } from './reads.ts';
import type { See } from './views.ts';
import type { Setup } from './workings.ts';

/** What went into a fact so far. */
export interface Draft {
  readonly facts: { fact: string; group: string | null }[];
  readonly figures: FigureUse[];
  readonly entries: FromEntry[];
  readonly assumed: Assumed[];
}

/** Where a reader gets facts and figures from. */
export interface Sources {
  readonly reads: Reads;
  readonly see: See;
  step(fact: string, group: string | null): Step;
  /** A figure at axis values, by its own axes where none are given; undefined where there is nothing. */
  figure(id: string, group: string | null, at?: readonly Value[]): FigureInBase | undefined;
}

const usedOf = (used: Map<string, Set<string | null>>, fact: string): Set<string | null> => {
  const groups = used.get(fact) ?? new Set();
  used.set(fact, groups);
  return groups;
};

/** The reader for one fact, of one group or of the flock; what it hands out goes on the draft. */
export const readerFor = (
  { book, facts, sortKeys }: Setup,
  { reads, see, step, figure: lookUp }: Sources,
  fact: Fact,
  group: string | null,
  draft: Draft,
): Reader => {
  const declared = (list: readonly string[], id: string): void => {
    if (!list.includes(id)) throw new Error(`fact ${fact.id} reads ${id} without declaring it`);
  };
  // A lifetime of flocks has hundreds of groups and thousands of entries: what is down already is looked up, not searched for.
  const used = new Map<string, Set<string | null>>();
  for (const each of draft.facts) usedOf(used, each.fact).add(each.group);
  const use = (id: string, of: string | null): Step => {
    const per = facts.get(id)?.per === 'flock' ? null : of;
    const groups = usedOf(used, id);
    if (!groups.has(per)) {
      groups.add(per);
      draft.facts.push({ fact: id, group: per });
    }
    return step(id, of);
  };
  const lines = new Set<number>();
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
    const found = lookUp(id, group, at);
    if (found !== undefined) record(found.use);
    return found?.base;
  };
  const tableOf = (id: string): Figure => {
    declared(fact.figures, id);
    reads.figure(id);
    return figureNamed(book, id);
  };
  const tableKeys = (id: string, branch: readonly string[] = []): readonly number[] =>
    keysOf(tableOf(id), reads.on, branch, sortKeys);
  return {
    state: reads.state,
    see,
    weatherDays: reads.weatherDays,
    get on() {
      return reads.on;
    },
    get asked() {
      return reads.asked;
    },
    get until() {
      return reads.until;
    },
    get named() {
      return reads.named;
    },
    get group() {
      const found = reads.group(group);
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
      return reads.state.groups
        .filter((each) => each.arrived <= reads.on)
        .map((each) => ({ group: each, value: use(id, each.name).value ?? undefined }));
    },
    of: (id, { name, arrived }) => {
      declared(fact.each, id);
      return arrived <= reads.on ? (use(id, name).value ?? undefined) : undefined;
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
        const found = lookUp(id, group, [...branch, x]);
        if (found === undefined) throw new Error(`figure ${id} has nothing at ${branch.join('/')} ${x}`);
        if (recordedOwn === undefined || (found.use.own && !recordedOwn)) record(found.use);
        recordedOwn = recordedOwn === true || found.use.own;
        return found.base;
      };
    },
    keysOf: tableKeys,
    namesOf: (id) => namesOf(tableOf(id), reads.on),
    spanOf: (id, branch) => {
      const keys = tableKeys(id, branch);
      return [keys[0] ?? 0, keys.at(-1) ?? 0];
    },
    causeClass: (cause) => reads.words.causes[cause]?.class ?? 'other',
    signClass: (sign) => reads.words.signs[sign]?.class ?? 'other',
    from: (...entries) => {
      for (const { on: day, line } of entries) {
        // A group that was only laid over the records stands on no line.
        if (line <= 0 || lines.has(line)) continue;
        lines.add(line);
        draft.entries.push({ on: day, line });
      }
    },
    assume: (id, values = {}) => {
      if (!Object.hasOwn(book.assumptions, id))
        throw new Error(`fact ${fact.id} assumes ${id}, which has no words`);
      draft.assumed.push({ id, group: fact.per === 'group' ? group : null, values });
    },
  };
};
