/** The ledger as read, and what reading and checking it need to know from outside. */
import type { Day } from '../day.ts';
import type { Problem } from '../problem.ts';
import type { Entry, SettingWords, Units } from '../types.ts';

/** All lines of one state file, and what was made of them. */
export interface Ledger {
  readonly file: string;
  /** Every line as it stands, blank ones too, without its line end; line 1 is at index 0. */
  readonly lines: readonly string[];
  /** The lines that could be read, in file order. */
  readonly entries: readonly Entry[];
  /** What is wrong with the other lines, in file order. */
  readonly problems: readonly Problem[];
  /** `torn` when the last line was cut off in the middle of being written. */
  readonly ended: 'clean' | 'torn';
}

/** What an entry has to know of a figure to set it. */
export interface FigureForm {
  readonly unit: string;
  /** Looked up only when a figure is set. */
  readonly cells?: (() => readonly string[]) | undefined;
}

/** The known names that entries may use; a part of the rulebook. */
export interface Book {
  readonly units: Units;
  /** Setting id → how its value is to be read. */
  readonly settings: Readonly<Record<string, Pick<SettingWords, 'dimension' | 'choices'>>>;
  /** Figure id → its unit, and the names of the cells of its table; no cells for a lone number. */
  readonly figures: Readonly<Record<string, FigureForm>>;
}

/** What the checks are held against. */
export interface Measure {
  /** Figures that bound what is believable, by id, in base units; a limit that is missing is not checked. */
  readonly limits: Readonly<Record<string, number>>;
  /** The day on which the check is made; entries that do not say when they were written are held against it. */
  readonly today: Day;
}
