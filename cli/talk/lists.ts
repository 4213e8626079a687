/** What is on record as lists of rows, for spreadsheets and scripts: masses in the unit of the place, days as 2026-05-14. */
import type { Entry, FromEntry, Group, State } from '../../engine/types.ts';
import { valued } from '../say/as-json.ts';
import type { Cell, Row } from '../say/csv.ts';
import { asKept, sayRecord } from '../say/record.ts';
import type { Speech } from '../say/speech.ts';
import { type Flock, momentOn, speechFor } from './flock.ts';

/** What the rows of a list are made from. */
interface Ground {
  readonly flock: Flock;
  readonly speech: Speech;
  readonly state: State;
  /** The entries that count, by their line. */
  readonly entries: ReadonlyMap<number, Entry>;
}

export interface List {
  readonly name: string;
  readonly says: string;
  readonly columns: readonly string[];
  readonly rows: (ground: Ground) => readonly Row[];
}

const massOf = ({ speech }: Ground, kg: number | null): Cell => valued(speech, kg, 'kg', '').value;

/** A mass and its unit; neither where none was told. */
const amountOf = (ground: Ground, kg: number | null): Row => ({
  amount: massOf(ground, kg),
  unit: kg === null ? null : valued(ground.speech, kg, 'kg', '').unit,
});

/** Who told it, and on which line. */
const provenance = ({ entries }: Ground, { line }: FromEntry): Row => ({
  by: entries.get(line)?.by ?? null,
  line,
});

/** By day, then by line. */
const inOrder = <T extends FromEntry>(items: readonly T[]): readonly T[] =>
  items.toSorted((one, other) => (one.on === other.on ? one.line - other.line : one.on < other.on ? -1 : 1));

/** Something of every group, each with the name of its group, by day. */
const ofGroups = <T extends FromEntry>(
  { state }: Ground,
  of: (group: Group) => readonly T[],
): readonly (T & { readonly group: string })[] =>
  inOrder(state.groups.flatMap((group) => of(group).map((each) => ({ ...each, group: group.name }))));

const entries: List = {
  name: 'entries',
  says: 'every entry that counts, as it was told',
  columns: ['line', 'on', 'kind', 'group', 'says', 'by', 'written'],
  rows: ({ speech, entries: all }) =>
    [...all.values()].map((entry) => ({
      line: entry.line,
      on: entry.on,
      kind: entry.kind,
      group: typeof entry.fields.group === 'string' ? entry.fields.group : null,
      // The day has a column of its own.
      says: sayRecord({ ...speech, today: entry.on }, { ...entry, fields: asKept(entry) }),
      by: entry.by,
      written: entry.written,
    })),
};

const losses: List = {
  name: 'losses',
  says: 'birds lost, with their cause',
  columns: ['on', 'group', 'count', 'cause', 'by', 'line'],
  rows: (ground) =>
    ofGroups(ground, (group) => group.losses).map((each) => ({
      ...provenance(ground, each),
      on: each.on,
      group: each.group,
      count: each.count,
      cause: each.cause,
    })),
};

const feed: List = {
  name: 'feed',
  says: 'feed given',
  columns: ['on', 'group', 'amount', 'unit', 'ration', 'by', 'line'],
  rows: (ground) =>
    inOrder(ground.state.feedings).map((each) => {
      const ration = ground.entries.get(each.line)?.fields.ration;
      return {
        ...provenance(ground, each),
        on: each.on,
        group: each.group,
        ...amountOf(ground, each.mass),
        ration: typeof ration === 'string' ? ration : null,
      };
    }),
};

const weights: List = {
  name: 'weights',
  says: 'birds weighed: mean live weight, and how far they lie apart',
  columns: ['on', 'group', 'count', 'mean', 'spread', 'unit', 'by', 'line'],
  rows: (ground) =>
    ofGroups(ground, (group) => group.weighings).map((each) => ({
      ...provenance(ground, each),
      on: each.on,
      group: each.group,
      count: each.count,
      mean: massOf(ground, each.mean),
      spread: massOf(ground, each.spread),
      unit: amountOf(ground, each.mean).unit ?? null,
    })),
};

const purchases: List = {
  name: 'purchases',
  says: 'what was bought, with its price',
  columns: ['on', 'what', 'ration', 'group', 'count', 'bags', 'amount', 'unit', 'price', 'by', 'line'],
  rows: (ground) =>
    inOrder(ground.state.purchases).map(({ mass: kg, what, ration, group, count, bags, price, ...from }) => ({
      ...provenance(ground, from),
      on: from.on,
      what,
      ration,
      group,
      count,
      bags,
      ...amountOf(ground, kg),
      price,
    })),
};

/** What went into the freezer and out of it: a promise is neither, and birds paid for are counted when they are handed over. */
const freezer: List = {
  name: 'freezer',
  says: 'birds put into the freezer, eaten, and handed over',
  columns: ['on', 'what', 'count', 'amount', 'unit', 'group', 'who', 'by', 'line'],
  rows: (ground) => {
    const { state } = ground;
    const moves = [
      ...ofGroups(ground, (group) => group.processed).map(({ dressed, ...each }) => ({
        ...each,
        what: 'in',
        amount: dressed,
      })),
      ...state.eaten.map(({ mass: kg, ...each }) => ({ ...each, what: 'eaten', amount: kg })),
      ...state.shares
        .filter(({ step }) => step === 'handed')
        .map(({ who, on, line, count }) => ({ on, line, count, who, what: 'handed over', amount: null })),
    ];
    return inOrder(moves).map((each) => ({
      ...each,
      ...provenance(ground, each),
      ...amountOf(ground, each.amount),
    }));
  },
};

const advice: List = {
  name: 'advice',
  says: 'answers given in the chat and to "penside WORDS", as they were noted',
  columns: ['at', 'asked', 'question', 'on', 'group', 'verdict', 'rule', 'ref'],
  rows: ({ flock }) =>
    flock
      .engine()
      .audit(null)
      .log()
      .advice.flatMap(({ at, asked, request, parts, ref }) =>
        parts.map(({ group, verdict, rule }) => ({
          at,
          asked,
          question: request.question,
          on: request.moment.on,
          group,
          verdict,
          rule,
          ref,
        })),
      ),
};

/** Every list there is, under the name it is asked for by. */
export const lists: readonly List[] = [entries, losses, feed, weights, purchases, freezer, advice];

/** The rows of a list, each with every column of it, up to the flock's today. */
export const rowsOf = (flock: Flock, list: List): readonly Row[] => {
  const state = flock.engine().state(momentOn(flock, flock.today));
  const standing = new Map(
    flock
      .engine()
      .standing()
      .map((entry) => [entry.line, entry]),
  );
  const rows = list.rows({ flock, speech: speechFor(flock), state, entries: standing });
  return rows.map((row) => Object.fromEntries(list.columns.map((name) => [name, row[name] ?? null])));
};
