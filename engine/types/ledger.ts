/** Entries and the state they add up to, as types. */
import type { Day } from '../day.ts';
import type { Quantity, Value } from './values.ts';

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
  /** Lines that are to count as never written, as if each were undone: so a cause is taken away to see what it did. */
  readonly without?: readonly number[] | undefined;
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
  /** The group that it was bought for; null when that was not said. */
  readonly group: string | null;
}

/** A number of the weather, seen, told as forecast, or fetched from a forecast service. */
export interface Air extends Noted {
  /** When it was fetched, local date and time with offset; absent for what a keeper typed. */
  readonly fetched?: string | undefined;
}

/** One day's weather as seen or forecast; a night belongs to the day on which it begins. */
export interface WeatherDay {
  readonly on: Day;
  /** °C */
  readonly low: Air | null;
  /** °C */
  readonly high: Air | null;
  /** mm */
  readonly rain: Air | null;
  /** m/s */
  readonly wind: Air | null;
  /** Relative humidity, ratio 0..1 */
  readonly humidity: Air | null;
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
  /** The cell of the figure's table, such as `21` or `slow/56`; absent for a figure that is a lone number. */
  readonly at?: string | undefined;
  /** The one group that it is set for; absent for all. */
  readonly group?: string | undefined;
  /** Null when none was given. */
  readonly reason: string | null;
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
