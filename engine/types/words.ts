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

export interface SettingWords {
  readonly name: string;
  /** A dimension, or `text`, `count`, `yes-no`, `money`, `day`, `clock`. */
  readonly dimension: string;
  readonly words: readonly string[];
  readonly example: string;
}

/** A cause or a sign: what it belongs to, how it is heard, and how it is named back (its first words, unless a name is given). */
export interface ClassedWords {
  readonly class: string;
  readonly name?: string | undefined;
  readonly words: readonly string[];
}
