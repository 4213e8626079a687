/** The words of the house as types: entry, state, figure, fact, rule, question, answer. Imports no code. */
import type { Day } from './day.ts';
import type { Problem } from './problem.ts';

/** A number with its unit, as typed or as published; units are those of `rules/units.yaml`. */
export interface Quantity {
  readonly value: number;
  readonly unit: string;
}

/** What a fact can be worth. Numbers are in the base unit of their dimension; days and choices are text. */
export type Value = number | boolean | string;

// ---- ledger ---------------------------------------------------------------------------------------------

/** The value of one field of an entry, already read: quantities keep the unit that the keeper used. */
export type FieldValue = string | number | boolean | Quantity | readonly Quantity[] | readonly string[];

/** One line of the state file: something that happened or was seen. Never edited. */
export interface Entry {
  readonly kind: string;
  /** The day it is about. */
  readonly on: Day;
  /** When it was written, local date and time with offset; null on a line typed in by hand without it. */
  readonly written: string | null;
  /** Who wrote it, where known. */
  readonly by: string | null;
  readonly line: number;
  readonly raw: string;
  readonly fields: Readonly<Record<string, FieldValue>>;
}

/** Which day is asked about, and how much of the ledger is believed. */
export interface Moment {
  readonly on: Day;
  /** Only entries written on or before this day; null for all. */
  readonly asOf: Day | null;
  /** Only the first so many lines; null for all. */
  readonly lines: number | null;
}

/** Anything in the state that came from one ledger line. */
export interface FromEntry {
  readonly on: Day;
  readonly line: number;
}

/** A number in base units read from one ledger line. */
export interface Noted extends FromEntry {
  readonly value: number;
}

export interface Loss extends FromEntry {
  readonly count: number;
  /** A cause from `rules/words.yaml`, or `unknown`. */
  readonly cause: string;
}

/** Some birds put on a scale together or one by one. */
export interface Weighing extends FromEntry {
  /** Mean live weight, kg. */
  readonly mean: number;
  /** How many birds it is the mean of. */
  readonly count: number;
  /** Sample standard deviation, kg, when single weights were given. */
  readonly spread: number | null;
}

export interface Feeding extends FromEntry {
  /** Feed given, kg. */
  readonly mass: number;
  /** The group it went to; null when it was given to all. */
  readonly group: string | null;
}

/** Where a group lives from a day on. */
export interface Whereabouts extends FromEntry {
  readonly place: 'brooder' | 'pen';
  /** True when they only spend the day there and go back to the brooder at night. */
  readonly daysOnly: boolean;
}

export interface Sign extends FromEntry {
  /** A sign from `rules/words.yaml`, or `other`. */
  readonly sign: string;
  readonly count: number | null;
  readonly group: string | null;
  readonly words: string;
}

export interface PenMove extends FromEntry {
  readonly group: string | null;
  /** Distance, m; null for one length of the pen. */
  readonly distance: number | null;
  /** Where it moved to, when named. */
  readonly strip: string | null;
}

export interface Processing extends FromEntry {
  readonly count: number;
  /** Dressed weight of all of them, kg, when weighed. */
  readonly dressed: number | null;
}

export interface Keeping extends FromEntry {
  readonly count: number;
  readonly until: Day | null;
}

/** Birds of one kind and hatch. Counts are birds. */
export interface Group {
  readonly name: string;
  /** `fast`, `medium`, `slow`, or a kind that the keeper described. */
  readonly kind: string;
  readonly sexes: 'mixed' | 'cockerels' | 'pullets';
  readonly hatched: Day;
  /** Hour of the hatch, `HH:MM`, where known. */
  readonly hatchHour: string | null;
  readonly arrived: Day;
  readonly line: number;
  /** Birds in the box, dead ones included. */
  readonly boxed: number;
  /** Dead in the box. */
  readonly dead: number;
  readonly losses: readonly Loss[];
  readonly weighings: readonly Weighing[];
  readonly whereabouts: readonly Whereabouts[];
  readonly processed: readonly Processing[];
  readonly kept: readonly Keeping[];
}

export interface Purchase extends FromEntry {
  readonly what: string;
  readonly ration: string | null;
  /** Mass bought, kg, for feed and bedding. */
  readonly mass: number | null;
  readonly bags: number | null;
  readonly count: number | null;
  /** Exact decimal text, such as `58.50`; null when not said. */
  readonly price: string | null;
}

/** One day's weather as seen or forecast; a night belongs to the day on which it begins. */
export interface WeatherDay {
  readonly on: Day;
  /** °C */
  readonly low: Noted | null;
  /** °C */
  readonly high: Noted | null;
  /** mm */
  readonly rain: Noted | null;
  /** m/s */
  readonly wind: Noted | null;
  /** Relative humidity, ratio 0..1 */
  readonly humidity: Noted | null;
}

export interface Share extends FromEntry {
  readonly who: string;
  readonly count: number;
  readonly step: 'promised' | 'handed' | 'paid';
  readonly paid: string | null;
}

export interface Eaten extends FromEntry {
  readonly count: number;
  readonly mass: number | null;
}

/** A setting of the place: a number in base units, a size, a text or a yes or no. */
export interface Setting extends FromEntry {
  readonly what: string;
  readonly value: Value;
  /** Length and width in m, when it was given as a size; `value` is then the area in m². */
  readonly size: readonly [number, number] | null;
  /** As typed, for reading back. */
  readonly said: string;
}

export interface OwnFigure extends FromEntry {
  readonly figure: string;
  readonly quantity: Quantity;
  readonly reason: string;
}

/** What the entries up to a moment add up to. */
export interface State {
  readonly on: Day;
  readonly groups: readonly Group[];
  readonly feedings: readonly Feeding[];
  readonly purchases: readonly Purchase[];
  readonly moves: readonly PenMove[];
  readonly signs: readonly Sign[];
  /** By day, also days to come. */
  readonly weather: Readonly<Record<Day, WeatherDay>>;
  /** The latest value of each setting, and all that went before, oldest first. */
  readonly settings: Readonly<Record<string, readonly Setting[]>>;
  readonly shares: readonly Share[];
  readonly eaten: readonly Eaten[];
  readonly ownFigures: readonly OwnFigure[];
  readonly notes: readonly (FromEntry & { readonly words: string })[];
  /** How many ledger lines are believed at this moment. */
  readonly lines: number;
}

// ---- rulebook -------------------------------------------------------------------------------------------

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
  readonly not: readonly string[];
  /** Ideas that speak for it (above 0) or against it (below 0), with their weights. */
  readonly ideas: Readonly<Record<string, number>>;
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
  /** Whether a "when" and a "what would turn it" are worked out. */
  readonly turns: boolean;
  /** Facts that only another question's rules can tell: the first day on which that question is answered yes. */
  readonly foretells: Readonly<Record<string, string>>;
  /** What is drawn beside the answer, from the fact `<picture>-series`. */
  readonly picture: PictureKind | null;
}

/** Facts of the flock that say which groups to try, and how groups and plans are named. */
export interface Tries {
  /** Hatch days to try, and all that may be tried instead; days with spaces between. */
  readonly days: string;
  readonly beyond: string;
  /** Kinds to try in turn. */
  readonly kinds: string;
  /** Chicks of each group, how many groups, and days on the way. */
  readonly birds: string;
  readonly groups: string;
  readonly travel: string;
  /** `early` or `late`: which of two equally good days comes first. */
  readonly aim: string;
  /** What the search came to, supposed of the groups it answers for: `refused`, or `instead`. */
  readonly outcome: string;
  /** Days that one group lasts, and days by which plans must lie apart. */
  readonly lasts: string;
  readonly apart: string;
  /** How many plans are told. */
  readonly most: string;
  readonly names: readonly string[];
  /** Names of plans, best first. */
  readonly plans: readonly string[];
  readonly instead: string;
}

export type PictureKind = 'growth' | 'stock' | 'ground' | 'year';

/** What a picture is drawn from: the value of a series, JSON text, for a group or for the flock. */
export interface PictureData {
  readonly kind: PictureKind;
  readonly group: string | null;
  readonly series: string;
}

/** The words of a fact: the engine only knows its id. */
export interface FactWords {
  readonly id: string;
  readonly name: string;
  /** The working in words with {fact}s and {figure}s, so that a reader can redo it. */
  readonly how: string;
  /** What to ask when it is unknown, and a line that would settle it. */
  readonly ask: string | null;
  readonly tell: string | null;
  /** Units to show it in where they differ from those of its dimension, such as inches for a trough. */
  readonly shown: { readonly us: string; readonly metric: string } | null;
  /** True for what neither the keeper nor the weather can change, such as age: it is never offered as what would turn an answer. */
  readonly fixed: boolean;
}

/** The words of an entry kind: how it is told, read back and asked for. */
export interface RecordWords {
  readonly kind: string;
  /** As offered in a choice: "a record of a loss". */
  readonly offer: string;
  /** One example of telling it. */
  readonly example: string;
  readonly phrasings: readonly string[];
  readonly not: readonly string[];
  readonly ideas: Readonly<Record<string, number>>;
  /** The read-back with {field}s; a part in [square brackets] is left out when a field in it is missing. */
  readonly says: string;
  /** Field → what to ask when it is missing. */
  readonly asks: Readonly<Record<string, string>>;
}

/** Vocabulary of the trade for understanding and for reading entries. */
export interface Words {
  /** Idea → the words and short phrases that carry it. */
  readonly ideas: Readonly<Record<string, readonly string[]>>;
  /** Cause of a loss → its words; `class` groups causes (hunter, illness, …). */
  readonly causes: Readonly<Record<string, ClassedWords>>;
  readonly signs: Readonly<Record<string, ClassedWords>>;
  /** Bird kinds → their words. */
  readonly kinds: Readonly<Record<string, readonly string[]>>;
  /** Settings of the place → dimension, unit when bare, words, and how they are named back. */
  readonly settings: Readonly<Record<string, SettingWords>>;
}

/** A cause or a sign: what it belongs to, how it is heard, and how it is named back (its first words, unless a name is given). */
export interface ClassedWords {
  readonly class: string;
  readonly name?: string | undefined;
  readonly words: readonly string[];
}

export interface SettingWords {
  readonly name: string;
  /** A dimension, or `text`, `count`, `yes-no`, `money`, `day`, `clock`. */
  readonly dimension: string;
  readonly words: readonly string[];
  readonly example: string;
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
  readonly words: Words;
  /** Short hash of all of it. */
  readonly hash: string;
}

// ---- reasoning ------------------------------------------------------------------------------------------

export type Outcome = 'held' | 'failed' | 'unknown';

/** A value laid over a fact or a figure for one answer; in base units; never written down. */
export interface Supposition {
  readonly what: { readonly fact: string } | { readonly figure: string };
  readonly value: Value;
  /** Adds to what the fact would have been instead of replacing it. */
  readonly adds: boolean;
}

/** What is asked of the engine. */
export interface Request {
  readonly question: string;
  /** Group names; empty for those that the question concerns. */
  readonly groups: readonly string[];
  readonly moment: Moment;
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
  /** True when the keeper set it. */
  readonly own: boolean;
}

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

export interface TurnsOn {
  readonly fact: string;
  readonly group: string | null;
  readonly from: Value | null;
  readonly to: Value;
  readonly unit: string | null;
  /** The verdict it would turn to. */
  readonly verdict: Gives;
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
