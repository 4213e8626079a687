/** The words of facts, records, ideas, causes, signs and settings, as types. Imports nothing. */

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
  /** How a keeper may speak of it in a what-if, most telling first; empty where nobody would. */
  readonly supposedBy: readonly SupposedBy[];
}

/** A kind of change that, with a value of some sort in a what-if, means a fact. */
export interface SupposedBy {
  /** What is supposed, by the name under which understanding learns to tell it: `night-low`. */
  readonly kind: string;
  /** How the supposition is named back: "night low". */
  readonly as: string;
  /** Sorts of values: dimensions of units, `money`, `age`, `number` for a bare one, `share` for a part of a whole, `times` for "twice". */
  readonly takes: readonly string[];
  /** True when the value goes off what there is, as of birds lost. */
  readonly takesAway: boolean;
  /** For birds that go off: the kind of record that would tell it, so that everything which rests on such records follows. */
  readonly tells: string | null;
  /** The fact that a share is of, where it is another one: a share of the freezer's size is free. */
  readonly shareOf: string | null;
  /** For a fact that is a day: the one that a number of days is counted from, as in "a week later". */
  readonly from: string | null;
  /** True for a fact that only its own question rests on: elsewhere others of its kind are meant before it. */
  readonly narrow: boolean;
  /** The figure that is meant where no value is said: "if it rains". */
  readonly unsaid: string | null;
}

/** The words of an entry kind: how it is told, read back and asked for. */
export interface RecordWords {
  readonly kind: string;
  /** As offered in a choice: "a record of a loss". */
  readonly offer: string;
  /** One example of telling it. */
  readonly example: string;
  readonly phrasings: readonly string[];
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
  /** A danger that a line outside of all questions may speak of → the caution that is said. */
  readonly hazards: Readonly<Record<string, string>>;
}

export interface SettingWords {
  readonly name: string;
  /** A dimension, or `text`, `count`, `yes-no`, `money`, `day`, `clock`. */
  readonly dimension: string;
  /** The only values that there are; left out where others may be told. */
  readonly choices?: readonly string[] | undefined;
  readonly words: readonly string[];
  readonly example: string;
}

/** A cause or a sign: what it belongs to, how it is heard, and how it is named back (its first words, unless a name is given). */
export interface ClassedWords {
  readonly class: string;
  readonly name?: string | undefined;
  readonly words: readonly string[];
}

/** What every sheet for a helper says: where birds are, before beginning, what to mind, and when to ring. */
export interface SheetWords {
  /** A value of the fact `place` → where that is. */
  readonly where: Readonly<Record<string, string>>;
  readonly before: string;
  readonly mind: readonly string[];
  readonly ring: readonly string[];
}

/** One question of the first run, answered by a setting, or by a record that asks for its other fields itself. */
export type FirstStep = {
  readonly id: string;
  readonly ask: string;
  /** An answer as it may be typed. */
  readonly example: string;
  /** The same for a keeper who measures in metric units, where it differs. */
  readonly metric?: string | undefined;
  /** What is taken for granted when it is skipped. */
  readonly skipped: string;
  /** Another step that leaves nothing to ask here once it is answered. */
  readonly unless?: string | undefined;
  /** Another step without whose answer this one means nothing. */
  readonly after?: string | undefined;
} & ({ readonly setting: string } | { readonly record: string; readonly field: string });

/** What the chat asks a keeper who begins, and what it says in the end, with birds and without. */
export interface FirstRun {
  readonly steps: readonly FirstStep[];
  readonly ends: { readonly birds: string; readonly none: string };
  /** Said wherever an answer wants birds and there are none. */
  readonly planning: string;
}
