/** Units, figures, rules, questions and words, as types. */

import type { Day } from '../day.ts';
import type { Outcome } from './reasoning.ts';
import type { Imagines, Tries } from './trying.ts';
import type { Value } from './values.ts';
import type { FactWords, FirstRun, RecordWords, SheetWords, Words } from './words.ts';

/** A unit of the closed list. Base value = (value + offset) × factor. */
export interface Unit {
  readonly id: string;
  readonly dimension: string;
  readonly factor: number;
  readonly offset: number;
  /** Shown after a number, such as `lb`, ` °F`. */
  readonly one: string;
  readonly many: string;
  /** How people write it. */
  readonly words: readonly string[];
  /** Decimals to show. */
  readonly decimals: number;
}

export interface Units {
  readonly list: readonly Unit[];
  readonly byId: Readonly<Record<string, Unit>>;
  /** Dimension → its base unit. */
  readonly base: Readonly<Record<string, Unit>>;
  /** Which unit a dimension is shown in, by system. */
  readonly shown: Readonly<Record<string, { readonly us: string; readonly metric: string }>>;
}

/** A branch of a figure's table: numbers by the first axis, then by the next. */
export interface FigureTable {
  readonly [key: string]: number | FigureTable;
}

export interface FigureValue {
  /** In force from this day. */
  readonly from: Day;
  readonly source: string;
  readonly value: number | FigureTable;
  readonly note: string | null;
}

/** How a table is entered: by a fact, in steps (`step`), on straight lines (`line`), or by name (`name`). */
export interface FigureAxis {
  readonly fact: string;
  /** Unit of the keys, for number axes. */
  readonly unit: string | null;
  readonly between: 'step' | 'line' | 'name';
}

/** A published number with unit, source and dated values. */
export interface Figure {
  readonly id: string;
  readonly description: string;
  readonly unit: string;
  readonly by: readonly FigureAxis[];
  /** Units to show it in where they differ from those of its dimension, such as inches for a lamp's height. */
  readonly shown: { readonly us: string; readonly metric: string } | null;
  readonly values: readonly FigureValue[];
  /** Only for a figure from a rule file of the keeper's: the published one whose place it takes, if any. */
  readonly own?: { readonly published: Figure | null } | undefined;
}

export interface Source {
  readonly id: string;
  readonly author: string;
  readonly title: string;
  readonly year: string;
  readonly where: string;
  /** `published` was read, `relayed` was read in a page that relays it, the others say it plainly. */
  readonly standing: 'published' | 'relayed' | 'memory' | 'practice' | 'judgement' | 'derived';
}

/** One comparison. The right-hand side is a figure, another fact, or a choice, true, false, 0 or 1. */
export interface Leaf {
  readonly fact: string;
  readonly operator: string;
  readonly figure: string | null;
  readonly other: string | null;
  readonly value: Value | readonly string[] | null;
  readonly because: string;
}

export type Condition =
  | Leaf
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };

/** What a rule gives when it holds. */
export type Gives = 'yes' | 'no' | 'cannot-say' | 'amount' | 'list' | 'caution' | 'step' | 'remark';

/** A task for the daily round that a holding rule brings with it. */
export interface Chore {
  readonly id: string;
  /** `now` before all else, `morning`, `midday`, `evening`, `soon` for what must be bought or booked, or `dated` for what is placed by its `by`. */
  readonly at: string;
  readonly order: number;
  readonly says: string;
  /** Entry kind that ticks it off when one is on record for the day; null when none does. */
  readonly doneBy: string | null;
  /** Rules whose chore for the same group makes this one pointless that day: nobody trims the heat of birds that are moving out. */
  readonly givesWayTo: readonly string[];
  /** The fact (a day, or a day and time) by which it must be done; null when the time of day says enough. */
  readonly by: string | null;
  /** The figure that says how long before it a calendar reminds of it; null for not at all. */
  readonly remind: string | null;
  /** For somebody who does it for the first time: how to see that it went right, and what to ring the keeper for. */
  readonly rightWhen: string | null;
  readonly ringWhen: string | null;
}

export interface RuleCase {
  readonly name: string;
  readonly facts: Readonly<Record<string, string | number | boolean>>;
  readonly figures: Readonly<Record<string, string | number>>;
  readonly expect: Outcome;
}

/** Conditions over facts and figures, what they give, the wording, and why it is right. */
export interface Rule {
  readonly id: string;
  readonly question: string;
  readonly gives: Gives;
  readonly when: Condition;
  readonly says: string;
  readonly whyRight: string;
  readonly source: string;
  readonly outranks: readonly string[];
  readonly chore: Chore | null;
  /** Whether its caution also belongs on the daily round; standing cautions would only dull the eye there. */
  readonly daily: boolean;
  readonly cases: readonly RuleCase[];
  /** Only for a rule from a file of the keeper's: the published one whose place it takes, if any. */
  readonly own?: { readonly published: Rule | null } | undefined;
}

export interface QuestionResult {
  readonly id: string;
  /** The fact behind it; `when` stands for the first day on which the verdict is yes. */
  readonly fact: string;
  /** `sum` adds a total over the groups. */
  readonly total: 'sum' | null;
  /** Unit that scripts are given it in where that is not the one it is shown in, such as percent for a ratio. */
  readonly unit: string | null;
}

/** Something that can be asked: its phrasings and the rules that answer it. */
export interface Question {
  readonly id: string;
  /** As offered in a choice: "whether the birds can go out". */
  readonly offer: string;
  /** One example of asking it. */
  readonly example: string;
  /** `about` questions concern the answers and the ledger themselves and have no rules. */
  readonly kind: 'yes-no' | 'amount' | 'list' | 'about';
  /** Answered group by group, or once for the flock. */
  readonly per: 'group' | 'flock';
  /** The groups it concerns when none is named; for a question of the whole flock, the days on which it belongs on the daily round. */
  readonly concerns: { readonly fact: string; readonly oneOf: readonly string[] } | null;
  /** Days that a question about a span takes when none is said; 0 for no span. */
  readonly days: number;
  readonly phrasings: readonly string[];
  readonly results: readonly QuestionResult[];
  /** Whether a span lies behind the day it ends on, as of losses "between 1 and 15 June". */
  readonly looksBack: boolean;
  /** What the words say that stands for facts: slots ("for 42 birds" supposes 42 of them for this one answer), `signs`, `causes`, or an idea as `idea-…`. */
  readonly takes: Readonly<Record<string, string>>;
  /** Wording for all groups together, with the totals as {facts}; null when there is nothing to add up. */
  readonly together: string | null;
  /** Questions whose chores make up this list; only for the daily round. */
  readonly gathers: readonly string[];
  /** How groups that are not there yet are tried, where the answer is a plan; null for all other questions. */
  readonly tries: Tries | null;
  /** The group answered for where there are no birds that it concerns; null where it is answered for birds alone. */
  readonly imagines: Imagines | null;
  /** Whether a "when" and a "what would turn it" are worked out. */
  readonly turns: boolean;
  /** How many days ahead are looked at for the turn, where fewer than usual say all there is to say; null for the usual. */
  readonly ahead: number | null;
  /** Facts that only another question's rules can tell: the first day on which that question is answered yes. */
  readonly foretells: Readonly<Record<string, string>>;
  /** Further ways of asking it, from a rule file of the keeper's. */
  readonly own?: readonly string[] | undefined;
  /** What is drawn beside the answer, from the fact `<picture>-series`. */
  readonly picture: PictureKind | null;
}

export type PictureKind = 'growth' | 'stock' | 'ground' | 'year';

/** What a picture is drawn from: the value of a series, JSON text, for a group or for the flock. */
export interface PictureData {
  readonly kind: PictureKind;
  readonly group: string | null;
  readonly series: string;
}

export interface Rulebook {
  readonly units: Units;
  readonly figures: Readonly<Record<string, Figure>>;
  readonly sources: Readonly<Record<string, Source>>;
  readonly questions: Readonly<Record<string, Question>>;
  /** By entry kind. */
  readonly records: Readonly<Record<string, RecordWords>>;
  readonly rules: Readonly<Record<string, Rule>>;
  readonly facts: Readonly<Record<string, FactWords>>;
  /** Assumption id → its wording. */
  readonly assumptions: Readonly<Record<string, string>>;
  /** What a sheet for somebody new to the birds says beside the answer itself. */
  readonly sheet?: SheetWords | undefined;
  /** What the chat asks a keeper who begins. */
  readonly firstRun?: FirstRun | undefined;
  readonly words: Words;
  /** Short hash of all of it. */
  readonly hash: string;
}
