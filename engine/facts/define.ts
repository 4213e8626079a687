/** What a fact is: a named value with a unit, worked out from state, figures and other facts at a moment. */
import type { Day } from '../day.ts';
import type { FromEntry, Group, Shown, State, Value } from '../types.ts';
import type { SeeLists } from './views.ts';

/** Unit of a fact: a base unit of `rules/units.yaml`, `date` for a day, `date-time` for a local day and time (`2026-05-16T07:00`), `named` for causes and signs by their ids (`hawk`, `hawk=2 unknown=1`), `series` for what a picture is drawn from (JSON text), or null for a choice or a yes or no. */
export type FactUnit = string | null;

/**
 * What a fact may look at while it is worked out. Everything read through here is recorded, so that an answer
 * cannot forget a figure, a fact or an entry that it used. Numbers are in base units.
 */
export interface Reader {
  readonly state: State;
  /** The group asked about; reading it in a fact of the whole flock is a bug and throws. */
  readonly group: Group;
  /** Groups named in the question, for facts of the flock that compare some of them; empty when none was. */
  readonly named: readonly string[];
  /** The day it is worked out for; later than `asked` when looking ahead. */
  readonly on: Day;
  /** The day the question is asked about: what is on record ends here. */
  readonly asked: Day;
  /** Last day of the span asked about, included; null when the question has none. */
  readonly until: Day | null;
  /** Something made once of parts of the state and kept with them; every part is given by name, so that it is put down. */
  readonly see: SeeLists;
  /** Days of which weather is on record, newest first. */
  weatherDays(): readonly Day[];
  /** A needed number, boolean or text. The fact must be declared in `needs`. */
  number(fact: string): number;
  yes(fact: string): boolean;
  text(fact: string): string;
  /** A wanted value; undefined when it is not known. The fact must be declared in `wants`. */
  maybe(fact: string): Value | undefined;
  /** A fact of every group that has arrived, undefined where unknown. Must be declared in `each`. */
  each(fact: string): readonly { readonly group: Group; readonly value: Value | undefined }[];
  /** The same of one of them alone; undefined also for one that has not arrived. */
  of(fact: string, group: Group): Value | undefined;
  /** A figure, in base units; entered by its own axes unless `at` gives them. Throws when the table has no such entry: declare a default row. */
  figure(id: string, at?: readonly Value[]): number;
  /** The same, undefined where the table has nothing. */
  maybeFigure(id: string, at?: readonly Value[]): number | undefined;
  /** A table along its last axis (in that axis's own unit), for models that walk over many days. */
  along(id: string, branch?: readonly string[]): (x: number) => number;
  /** Keys of a table along its last axis, lowest first, for a line through what was really published. */
  keysOf(id: string, branch?: readonly string[]): readonly number[];
  /** Names along a table's first axis, as the file has them. */
  namesOf(id: string): readonly string[];
  /** The first and the last of them. */
  spanOf(id: string, branch?: readonly string[]): readonly [number, number];
  /** The class of a cause of loss (`hunter`, `illness`, …) and of a sign, as `rules/words.yaml` has it; `other` when it has not. */
  causeClass(cause: string): string;
  signClass(sign: string): string;
  /** Records that ledger lines went into the value. */
  from(...entries: readonly FromEntry[]): void;
  /** Says that something was taken for granted: an id of `rules/assumptions.yaml` and what fills its wording. */
  assume(id: string, values?: Readonly<Record<string, Shown>>): void;
}

export interface Fact {
  readonly id: string;
  readonly unit: FactUnit;
  readonly per: 'group' | 'flock';
  /** Facts without which it is unknown. */
  readonly needs: readonly string[];
  /** Facts that it uses when they are known. */
  readonly wants: readonly string[];
  /** Facts of every group, for a fact of the flock. */
  readonly each: readonly string[];
  readonly figures: readonly string[];
  /** The value in base units, or undefined when an entry is lacking that only this fact can ask for. */
  readonly compute: (read: Reader) => Value | undefined;
}

/** Declares a fact; lists left out are empty and it is a fact of a group unless it says otherwise. */
export const defineFact = (fact: Pick<Fact, 'id' | 'unit' | 'compute'> & Partial<Fact>): Fact => ({
  per: 'group',
  needs: [],
  wants: [],
  each: [],
  figures: [],
  ...fact,
});
