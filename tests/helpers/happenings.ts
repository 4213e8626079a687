/** What can happen in a ledger drawn at random, told only as far as it could be. */
import { addDays, type Day } from '../../engine/day.ts';
import { lineOf, printOf } from '../../engine/ledger/index.ts';

/** One thing that happens: `much` and `which` are read as whatever it needs. */
export interface DrawnEvent {
  readonly what: string;
  readonly after: number;
  readonly much: number;
  readonly which: number;
  readonly exact: boolean;
}

/** An entry that stands once undos and corrections are settled, as its fields read. */
export interface Standing {
  readonly kind: string;
  readonly on: Day;
  readonly line: number;
  readonly fields: Readonly<Record<string, unknown>>;
}

const people = ['Ada', 'the neighbour', 'Uncle Bo'];
/** What may be taken back or made smaller without making any other entry impossible. */
const revisable = ['loss', 'feed', 'buy', 'eat'];

const cents = (amount: number): string => (amount / 100).toFixed(2);
/** One of a list, whatever the number. */
export const of = <T>(list: readonly T[], which: number): T | undefined => list[which % list.length];

/** A ledger while it is written, with the counts that keep impossible things from being told. */
export interface Draft {
  readonly lines: string[];
  readonly alive: Map<string, number>;
  standing: Standing[];
  frozen: number;
}

type Fields = Readonly<Record<string, unknown>>;

/** Adds an entry to a ledger. */
export const tell = (draft: Draft, kind: string, on: Day, fields: Fields): void => {
  // A stamp of its own keeps two alike entries from being the same line.
  const written = `${on}T12:${String(draft.lines.length % 60).padStart(2, '0')}:00+00:00`;
  draft.lines.push(lineOf({ kind, on, written, ...fields }));
  if (kind !== 'undo' && kind !== 'correct')
    draft.standing.push({ kind, on, line: draft.lines.length, fields });
};

const aliveIn = (draft: Draft, name: string): number => draft.alive.get(name) ?? 0;

/** Tells of birds that left a group, no more than there are. */
const take = (
  draft: Draft,
  kind: 'loss' | 'process',
  on: Day,
  group: string,
  most: number,
  more: (count: number) => Fields,
): void => {
  const count = Math.min(most, aliveIn(draft, group));
  if (count < 1) return;
  draft.alive.set(group, aliveIn(draft, group) - count);
  if (kind === 'process') draft.frozen += count;
  tell(draft, kind, on, { group, count, ...more(count) });
};

/** Takes birds out of the freezer, no more than there are. */
const takeFrozen = (draft: Draft, kind: string, on: Day, most: number, more: (count: number) => Fields) => {
  const count = Math.min(most, draft.frozen);
  if (count < 1) return;
  draft.frozen -= count;
  tell(draft, kind, on, { count, ...more(count) });
};

/** What a correction writes in place of an entry's own fields: never more birds than before. */
const smallerOf = ({ kind, fields }: Standing, much: number): Fields => {
  if (kind === 'feed') return { amount: `${much} lb` };
  if (typeof fields.price === 'string') return { price: cents(much * 7) };
  return Number(fields.count) > 1 ? { count: 1 } : {};
};

const revise = (draft: Draft, { what, much, which }: DrawnEvent, on: Day): void => {
  const target = of(
    draft.standing.filter(({ kind }) => revisable.includes(kind)),
    which,
  );
  if (target === undefined) return;
  const smaller = what === 'undo' ? null : smallerOf(target, much);
  if (smaller !== null && Object.keys(smaller).length === 0) return;
  const aim = { line: target.line, print: printOf(draft.lines[target.line - 1] ?? '') };
  tell(draft, what, on, smaller === null ? aim : { ...aim, with: smaller });
  const count = Number(target.fields.count ?? 0);
  const back = count - Number(smaller === null ? 0 : (smaller.count ?? count));
  const group = String(target.fields.group);
  if (target.kind === 'loss') draft.alive.set(group, aliveIn(draft, group) + back);
  if (target.kind === 'eat') draft.frozen += back;
  draft.standing = draft.standing.flatMap((each) => {
    if (each !== target) return [each];
    return smaller === null ? [] : [{ ...each, fields: { ...each.fields, ...smaller } }];
  });
};

type Happening = (draft: Draft, on: Day, event: DrawnEvent, group: string) => void;

const dressed =
  ({ exact, which }: DrawnEvent) =>
  (count: number): Fields =>
    exact ? { dressed: `${(count * (34 + which)) / 10} lb` } : {};

/** What can happen, each leaving out what could not be. */
export const happenings: Readonly<Record<string, Happening>> = {
  lose: (draft, on, { much, exact }, group) =>
    take(draft, 'loss', on, group, 1 + (much % 4), () => (exact ? { cause: 'hawk' } : {})),
  'process some': (draft, on, event, group) => take(draft, 'process', on, group, event.much, dressed(event)),
  'process all': (draft, on, event, group) =>
    take(draft, 'process', on, group, event.which % 3 === 0 ? aliveIn(draft, group) : 0, dressed(event)),
  keep: (draft, on, { much, exact }, group) => {
    const count = Math.min(aliveIn(draft, group), 1 + (much % 5));
    if (count > 0) tell(draft, 'keep', on, { group, count, ...(exact ? { until: addDays(on, much) } : {}) });
  },
  feed: (draft, on, { much }, group) => tell(draft, 'feed', on, { group, amount: `${much} lb` }),
  'feed all': (draft, on, { much }) => tell(draft, 'feed', on, { amount: `${much} lb` }),
  'buy feed': (draft, on, { much, which, exact }, group) => {
    const bags = 1 + (much % 9);
    const ration = of(['starter', 'grower', 'finisher', null], which);
    tell(draft, 'buy', on, {
      what: 'feed',
      bags: `${bags} bags`,
      ...(ration === null ? {} : { ration }),
      ...(exact ? { amount: `${50 * bags} lb`, price: cents(2150 * bags + which) } : {}),
      ...(which > 8 ? { group } : {}),
    });
  },
  'buy other things': (draft, on, { much, which }, group) =>
    tell(draft, 'buy', on, {
      what: of(['bedding', 'gear', 'chicks', 'twine'], which),
      price: cents(much * 133 + which),
      ...(which > 8 ? { group } : {}),
    }),
  'pay a bill': (draft, on, { much, which }) =>
    tell(draft, 'buy', on, { what: of(['processing', 'electricity'], which), price: cents(much * 211) }),
  'count the feed': (draft, on, { much, which }) => {
    if (which < 4) tell(draft, 'setting', on, { what: 'feed-in-stock', value: `${much * 10} lb` });
  },
  eat: (draft, on, { much }) => takeFrozen(draft, 'eat', on, 1 + (much % 3), () => ({})),
  'eat by weight': (draft, on, { much, which }) =>
    takeFrozen(draft, 'eat', on, 1 + (much % 3), (count) => ({
      weight: `${(count * (34 + which)) / 10} lb`,
    })),
  promise: (draft, on, { much, which }) =>
    tell(draft, 'share', on, { who: of(people, which), count: 1 + (much % 6), step: 'promised' }),
  hand: (draft, on, { much, which }) =>
    takeFrozen(draft, 'share', on, 1 + (much % 4), () => ({ who: of(people, which), step: 'handed' })),
  pay: (draft, on, { much, which }) =>
    tell(draft, 'share', on, {
      who: of(people, which),
      count: 1 + (much % 4),
      step: 'paid',
      paid: cents(much * 175),
    }),
  undo: (draft, on, event) => revise(draft, event, on),
  correct: (draft, on, event) => revise(draft, event, on),
  'go out': (draft, on, _event, group) => tell(draft, 'out', on, { group }),
};
