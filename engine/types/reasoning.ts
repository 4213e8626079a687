/** Outcomes, requests and answers, as types. */
import type { Day } from '../day.ts';
import type { Problem } from '../problem.ts';
import type { FromEntry, Moment } from './ledger.ts';
import type { Gives, PictureData } from './rulebook.ts';
import type { Value } from './values.ts';

export type Outcome = 'held' | 'failed' | 'unknown';

/** What a supposition is laid over: a fact, a figure, a rule (which is then switched off) or the ledger (an entry more, as it would be written). */
export type Supposed =
  | { readonly fact: string }
  | { readonly figure: string }
  | { readonly rule: string }
  | { readonly entry: Readonly<Record<string, unknown>> & { readonly kind: string; readonly on: Day } };

/** Something laid over the flock for one answer; in base units; never written down. */
export interface Supposition {
  readonly what: Supposed;
  /** The value of a fact or a figure; of no meaning for rules and entries. */
  readonly value: Value;
  /** Adds to what the fact would have been instead of replacing it. */
  readonly adds: boolean;
  /** Multiplies what the fact would have been instead, as in "half of them". */
  readonly times?: boolean | undefined;
  /** The one group it is supposed of; left out for all. */
  readonly group?: string | undefined;
}

/** What is asked of the engine. */
export interface Request {
  readonly question: string;
  /** Group names; empty for those that the question concerns. */
  readonly groups: readonly string[];
  readonly moment: Moment;
  /** The day on which it is asked, where the day asked about lies ahead of it: what is on record ends there, and the rest is foreseen. */
  readonly asked?: Day | undefined;
  /** End of a span, that day included; null where the question's own span applies. */
  readonly until: Day | null;
  readonly supposing: readonly Supposition[];
}

/** Why a fact has no value: the fact at the root, and the wording's id that says what would settle it. */
export interface Missing {
  readonly fact: string;
  readonly group: string | null;
}

/** What one fact or figure was worth and what it was made of. */
export interface Step {
  readonly fact: string;
  readonly group: string | null;
  readonly unit: string | null;
  readonly value: Value | null;
  readonly missing: readonly Missing[];
  readonly facts: readonly { readonly fact: string; readonly group: string | null }[];
  readonly figures: readonly FigureUse[];
  readonly entries: readonly FromEntry[];
  readonly assumed: readonly Assumed[];
  readonly supposed: boolean;
}

/** A figure as it stood when it was used. */
export interface FigureUse {
  readonly id: string;
  /** In the figure's own unit. */
  readonly value: number;
  readonly unit: string;
  /** In force since. */
  readonly from: Day;
  readonly source: string;
  /** True when the keeper set it, by an entry (`source` is then `line 12`) or by a rule file of their own. */
  readonly own: boolean;
  /** What would count without the keeper's own; absent where there is nothing published. */
  readonly published?: PublishedValue | undefined;
}

/** The published number beside one that the keeper set, in its own unit. */
export type PublishedValue = Pick<FigureUse, 'value' | 'unit' | 'from' | 'source'>;

/** Something taken for granted for want of a record: an id in `rules/assumptions.yaml` and what fills it. */
export interface Assumed {
  readonly id: string;
  readonly group: string | null;
  readonly values: Readonly<Record<string, Shown>>;
}

/** A value ready to be put into words: a number in base units of `unit`'s dimension, a text, or null for unknown. */
export interface Shown {
  readonly value: Value | null;
  /** Unit id of the base unit; `date`, `text` or null when not a measure. */
  readonly unit: string | null;
  /** The figure that it is, with its date and source; left out where it is none. */
  readonly figure?: FigureUse | undefined;
}

/** A sentence still to be filled: a template of the rulebook and its values. */
export interface Sentence {
  readonly template: string;
  readonly values: Readonly<Record<string, Shown>>;
}

export interface Reason {
  readonly n: number;
  readonly rule: string;
  readonly group: string | null;
  readonly outcome: Outcome;
  readonly says: Sentence;
  readonly fact: { readonly id: string; readonly value: Value | null; readonly unit: string | null };
  readonly operator: string;
  readonly figure: FigureUse | null;
  /** The fact it was held against, when that was no figure. */
  readonly other: { readonly id: string; readonly value: Value | null; readonly unit: string | null } | null;
  readonly source: string;
  readonly why: string;
}

export interface Result {
  readonly id: string;
  readonly fact: string;
  readonly group: string | null;
  readonly value: Value;
  readonly unit: string | null;
}

/** One fact with another value than it has. */
export interface Change {
  readonly fact: string;
  readonly group: string | null;
  readonly from: Value | null;
  readonly to: Value;
  readonly unit: string | null;
}

/** A change that turns the verdict, alone or together with a second one where none does so alone. */
export interface TurnsOn extends Change {
  readonly and?: Change | undefined;
  /** The verdict it would turn to. */
  readonly verdict: Gives;
}

/** A rule that could have decided and did not, and where it stopped. */
export interface PassedOver {
  readonly rule: string;
  readonly gives: Gives;
  readonly outcome: Outcome;
  /** The conditions that failed or are not known; none for a rule that holds and is outranked. */
  readonly stoppedBy: readonly Omit<Reason, 'n'>[];
}

/** What a rule says beside the verdict. */
export interface Aside {
  readonly rule: string;
  readonly says: Sentence;
  readonly source: string;
}

/** The answer for one group (or for the flock): its verdict, reasons and everything a question back can ask for. */
export interface Part {
  readonly group: string | null;
  readonly verdict: Gives;
  /** The rule that decided; null when none spoke. */
  readonly rule: string | null;
  readonly headline: Sentence | null;
  readonly reasons: readonly Reason[];
  readonly unknown: readonly Missing[];
  readonly cautions: readonly Aside[];
  readonly remarks: readonly Aside[];
  readonly steps: readonly StepToDo[];
  readonly when: { readonly on: Day; readonly verdict: Gives; readonly assumed: readonly Assumed[] } | null;
  readonly turnsOn: readonly TurnsOn[];
  /** The rules that could have decided otherwise and did not, highest-ranking first; none where that is not looked into. */
  readonly passedOver: readonly PassedOver[];
  /** Higher-ranking rules that could still overrule, for want of a fact. */
  readonly unless: readonly { readonly rule: string; readonly says: Sentence }[];
}

export interface StepToDo {
  readonly id: string;
  readonly rule: string;
  readonly question: string;
  readonly group: string | null;
  readonly at: string;
  /** By when, as a day or a day and time; null when `at` says enough. */
  readonly by: string | null;
  readonly order: number;
  readonly says: Sentence;
  readonly done: boolean;
  /** How long before it a calendar reminds of it, days; null for not at all. */
  readonly remind: number | null;
  /** How somebody new to it sees that it went right, and what to ring the keeper for; null where the rule does not say. */
  readonly rightWhen: Sentence | null;
  readonly ringWhen: Sentence | null;
}

export interface Answer {
  readonly request: Request;
  readonly question: string;
  readonly parts: readonly Part[];
  readonly results: readonly Result[];
  readonly assumed: readonly Assumed[];
  /** Every fact that was worked out, in the order of working; `why 2` walks in here. */
  readonly workings: readonly Step[];
  /** Problems of the ledger that touch this answer; grave ones stand in its way. */
  readonly problems: readonly Problem[];
  readonly pictures: readonly PictureData[];
  readonly ref: string;
}
