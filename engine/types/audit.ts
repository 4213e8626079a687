/** What differs between two answers, what made it differ, and advice once given, as types. */
import type { Day } from '../day.ts';
import type { Moment } from './ledger.ts';
import type { Answer, Part, Request, Result } from './reasoning.ts';
import type { Value } from './values.ts';

/**
 * One thing that an answer says: a group's verdict, the rule that decided it, a result, or a task. What two answers are
 * compared by.
 */
export interface Point {
  readonly what: 'verdict' | 'rule' | 'result' | 'task';
  /** A result's id or a task's rule; for the others the same as `what`. */
  readonly id: string;
  /** The fact behind a result. */
  readonly fact: string | null;
  readonly group: string | null;
  /** A task's value is the day or time it is due by, where it has one, else true. */
  readonly value: Value;
  readonly unit: string | null;
}

/** A point that two answers do not have in common; null where one of them says nothing of it. */
export interface Difference extends Omit<Point, 'value'> {
  readonly from: Value | null;
  readonly to: Value | null;
  /** By how much: `to` less `from` in base units, or days between two days; null where that makes no sense. */
  readonly size: number | null;
}

/** Something that came between two moments. Undoing it is leaving the lines out, setting the day, a figure or the rules back, or asking what the words were heard as. */
export type Cause =
  | {
      readonly kind: 'entry';
      readonly line: number;
      /** The entry's kind. */
      readonly entry: string;
      readonly on: Day;
      readonly how: 'told' | 'forecast' | 'own-figure' | 'corrected' | 'undone';
      /** The line put right or taken back. */
      readonly of: number | null;
    }
  | { readonly kind: 'figure'; readonly figure: string; readonly from: Day }
  | { readonly kind: 'rules'; readonly from: string; readonly to: string }
  | { readonly kind: 'days'; readonly from: Day; readonly to: Day }
  | { readonly kind: 'heard'; readonly words: string; readonly from: HeardAs; readonly to: HeardAs };

/** What some words were taken to ask. */
export interface HeardAs {
  readonly question: string;
  readonly groups: readonly string[];
  readonly on: Day;
}

/** What undoing one cause alone makes of a difference. */
export interface Effect {
  readonly cause: Cause;
  /** The point's value with only this cause undone; null when it is then not said at all. */
  readonly without: Value | null;
  /** Whether that is the earlier value again. */
  readonly isUndone: boolean;
}

/** A difference with its causes, each one tried by replay. */
export interface Explained extends Difference {
  /** The fewest found whose undoing brings the earlier value back: most often one. Empty when nothing that can be replayed does. */
  readonly causes: readonly Cause[];
  /** Every cause that alone moves it, the one that counts most first. */
  readonly effects: readonly Effect[];
}

/** Why some of it could not be replayed: the rules of then are not at hand, or the program has since learned to work it out otherwise, or the file's earlier lines were edited. */
export type Doubt = 'rules-not-kept' | 'program-changed' | 'file-edited';

/** The same question at two moments. */
export interface Comparison {
  readonly question: string;
  readonly earlier: Moment;
  readonly later: Moment;
  readonly before: readonly Point[];
  readonly after: readonly Point[];
  /** The answers, as far as they were worked out for this; the earlier is null where it could not be given again. */
  readonly was: Answer | null;
  readonly is: Answer;
  readonly differences: readonly Explained[];
  readonly doubt: Doubt | null;
  /** How many times the question was worked out for this. */
  readonly replays: number;
}

/** One answer as it was given: enough to give it again, and to say what it said when that cannot be done. */
export interface Advice {
  /** When it was given, local date and time with offset. */
  readonly at: string;
  /** As typed. */
  readonly asked: string;
  /** True where these words by themselves were heard so: nothing that was said before them had a part in it. Older logs do not say. */
  readonly alone?: boolean | undefined;
  /** With the lines counted that were there. */
  readonly request: Request;
  /** Hash of the rulebook. */
  readonly rules: string;
  /** Fingerprint of the lines that were there. */
  readonly print: string;
  readonly ref: string;
  readonly parts: readonly Pick<Part, 'group' | 'verdict' | 'rule'>[];
  readonly results: readonly Result[];
}

/** A day on which the advice on a question was another than the day before. */
export interface Turning {
  readonly on: Day;
  readonly comparison: Comparison;
}

/** A value that was worked out straight from a line, and what it would be had the line never been written. */
export interface Moved {
  readonly fact: string;
  readonly group: string | null;
  readonly unit: string | null;
  readonly value: Value | null;
  readonly without: Value | null;
}

/** An answer that one line has a part in: as it is, as it would be without, and what the two do not have in common. */
export interface Resting {
  readonly question: string;
  readonly is: Answer;
  readonly without: Answer;
  readonly differences: readonly Difference[];
}

/** An undo or a correction that counts. */
export interface Revised {
  readonly line: number;
  readonly how: 'undone' | 'corrected';
}

/** What one line of the ledger does, on a day, to what is known and advised. */
export interface Bearing {
  readonly line: number;
  /** The line that it takes back or puts right; null for any other. */
  readonly of: number | null;
  /** Later lines that take it back or put it right. */
  readonly revised: readonly Revised[];
  readonly moved: readonly Moved[];
  /** Questions whose answer would be another without it, then those that only read it. */
  readonly answers: readonly Resting[];
}
