/** The words of understanding as types: what is heard in a line, and what is known while listening. Imports no code. */
import type { Day } from '../../engine/day.ts';
import type { Rulebook } from '../../engine/types.ts';

/** A group of birds as far as understanding needs to know it. */
export interface KnownGroup {
  readonly name: string;
  readonly kind: string;
  readonly place: 'brooder' | 'pen' | 'gone';
  readonly hatched: Day;
  readonly alive: number;
}

/** What one fill of a household measure weighs. `stated` is false for a default that has to be said aloud. */
export interface Measure {
  readonly kg: number;
  readonly stated: boolean;
}

/** A field of a record that the last turn asked for. */
export interface Asking {
  readonly draft: Draft;
  readonly field: string;
}

/** All that understanding may look at besides the words themselves. */
export interface About {
  readonly today: Day;
  readonly groups: readonly KnownGroup[];
  readonly system: 'us' | 'metric';
  /** What a bag, a scoop and a bucket of feed hold; absent when nobody has said. */
  readonly measures: Readonly<Record<string, Measure>>;
  /** The last turn, which a follow-up leans on. */
  readonly before: Heard | null;
  /** The last question, where records were told since; left out where none was. */
  readonly asked?: Heard | null;
  /** The field that the last turn asked for. */
  readonly asking: Asking | null;
  readonly book: Rulebook;
}

/** A record on its way to the ledger: fields in the ledger's own form, and the required ones not yet said. */
export interface Draft {
  readonly kind: string;
  readonly on: Day;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly missing: readonly string[];
}

/** One thing laid over the ledger for a what-if, as said; `fact` or `figure` is filled where it is plain which is meant. */
export interface Supposing {
  readonly what: string;
  readonly fact?: string;
  readonly figure?: string;
  /** Words that name a rule which is to be switched off. */
  readonly rule?: string;
  readonly value: number | string;
  readonly unit: string | null;
  readonly adds: boolean;
  /** The value multiplies what there is: "if feed doubled". */
  readonly times?: boolean;
  /** The value `goes` off what there is, as a number (with `adds`) or as a share of it; or the share that it `is` of another fact, `of`. */
  readonly share?: 'goes' | 'is';
  /** The kind of record that would tell of birds that go off. */
  readonly tells?: string;
  /** For a value in days: the fact, a day, that they are counted from. */
  readonly from?: string;
  readonly of?: string;
  /** The one group it is said of. */
  readonly group?: string;
  /** What else it may be meant for, nearest first, where a question does not rest on `fact`. */
  readonly orElse?: readonly Supposing[];
}

/** Why a reading was taken: an idea, the keeper's words that carry it, and how much it counted. */
export interface Evidence {
  readonly idea: string;
  readonly words: string;
  readonly weight: number;
}

export type Slot = number | string | readonly string[] | readonly number[];

/** Ids of `rules/words.yaml` that the words mention: what a question may suppose to have been seen. */
export interface Mentions {
  readonly causes: readonly string[];
  readonly signs: readonly string[];
  readonly ideas: readonly string[];
}

/** One way to take the words. */
export interface Reading {
  /** A question's id, or `tell:` and an entry kind. */
  readonly topic: string;
  readonly groups: readonly string[];
  readonly on: Day | null;
  readonly until: Day | null;
  readonly days: number | null;
  readonly slots: Readonly<Record<string, Slot>>;
  readonly mentions: Mentions;
  readonly supposing: readonly Supposing[];
  /** True for a what-if that the conversation then stays in, rather than an `if` of one question. */
  readonly stays?: boolean;
  readonly entries: readonly Draft[];
  /** Short lines in plain words: what was taken for granted. */
  readonly assumed: readonly string[];
  /** Clauses of a record, in the keeper's words, of which nothing was taken; absent where there are none. */
  readonly leftOut?: readonly string[];
  readonly evidence: readonly Evidence[];
  readonly score: number;
}

/** What was heard. Not `sure` means: ask back with the readings as choices; no readings means: outside. */
export interface Heard {
  readonly words: string;
  /** Best first, three at most. */
  readonly readings: readonly Reading[];
  readonly sure: boolean;
  /** What a line that is turned away may be meant for all the same, nearest first, three at most. */
  readonly nearest: readonly Reading[];
  /** A danger that the words may speak of: an id of `hazards` in `rules/words.yaml`. */
  readonly hazard?: string | undefined;
  /** What the same breath tells beside asking: to be written first, or supposed where nothing is written. */
  readonly told?: { readonly words: string; readonly reading: Reading };
}
