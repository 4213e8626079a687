/** What a command is: its name, what it does, what it takes, and how it runs. */
import type { Surroundings } from '../surroundings.ts';

/** An option of the command line; `takes` is null for a switch. */
export interface Option {
  readonly name: string;
  readonly takes: string | null;
  readonly says: string;
}

export interface Given {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
}

/** What a command leaves to be written out, and its exit code. */
export interface Outcome {
  readonly out: readonly string[];
  readonly err: readonly string[];
  readonly exit: number;
}

export interface Command {
  readonly name: string;
  readonly says: string;
  readonly usage: string;
  /** Where it takes one of a few words, those words. */
  readonly words?: readonly string[] | undefined;
  readonly options: readonly Option[];
  readonly run: (given: Given, around: Surroundings) => Promise<Outcome>;
}

/** The text of a string option; undefined when it was not given. */
export const textOf = (given: Given, name: string): string | undefined => {
  const value = given.options[name];
  return typeof value === 'string' ? value : undefined;
};

export const wrongUse = (says: string): Outcome => ({ out: [], err: [says], exit: 64 });
