/** What finders find: stretches of tokens with a meaning. */
import type { Day } from '../../engine/day.ts';

interface At {
  /** First token, and the one after the last. */
  readonly from: number;
  readonly to: number;
}

export interface NumberSpan extends At {
  readonly kind: 'number';
  readonly value: number;
  /** As digits in the line, for exact money; null for number words. */
  readonly digits: string | null;
}

export interface QuantitySpan extends At {
  readonly kind: 'quantity';
  readonly value: number;
  readonly unit: string;
  readonly dimension: string;
}

export interface SizeSpan extends At {
  readonly kind: 'size';
  readonly sides: readonly [number, number];
  /** Unit of both sides; null when none was said. */
  readonly unit: string | null;
}

export interface MoneySpan extends At {
  readonly kind: 'money';
  /** Hundredths, exact. */
  readonly cents: number;
  /** True when it is the price of one (`each`, `a bag`), false when the sum (`total`), null when not said. */
  readonly each: boolean | null;
}

/** A day that may lean either way: `sunday` is the last one in a record, the next one in a plan. */
export interface DaySpan extends At {
  readonly kind: 'day';
  readonly past: Day;
  readonly future: Day;
  /** True when it takes no reckoning to say which day was meant, as `today` or a full date. */
  readonly plain: boolean;
  /** The word in front that turns it: up to it, since it, or on it. */
  readonly role: 'on' | 'until' | 'since';
}

/** A run of days: `this week`, `next 10 days`. */
export interface StretchSpan extends At {
  readonly kind: 'stretch';
  readonly first: Day;
  readonly last: Day;
  readonly days: number;
}

export interface AgeSpan extends At {
  readonly kind: 'age';
  readonly days: number;
}

export interface TimeSpan extends At {
  readonly kind: 'time';
  /** `HH:MM` */
  readonly at: string;
}

export interface GroupSpan extends At {
  readonly kind: 'group';
  /** Groups meant; empty when it is a kind of bird that is not on the place. */
  readonly names: readonly string[];
  /** Kind of bird the word stands for, when it does. */
  readonly bird: string | null;
  /** Said in the singular, as `a red`. */
  readonly one: boolean;
  /** Named by where they live alone, which may also be where they go. */
  readonly byPlace?: boolean;
}

/** A word or phrase of the lexicon: an idea, a cause, a sign, a setting, a place or a horizon. */
export interface TermSpan extends At {
  readonly kind: 'term';
  readonly list: 'idea' | 'cause' | 'sign' | 'setting';
  readonly id: string;
}

export type Span =
  | NumberSpan
  | QuantitySpan
  | SizeSpan
  | MoneySpan
  | DaySpan
  | StretchSpan
  | AgeSpan
  | TimeSpan
  | GroupSpan
  | TermSpan;

/** The spans of one kind, in the order of the line. */
export const spansOf = <K extends Span['kind']>(
  spans: readonly Span[],
  kind: K,
): readonly Extract<Span, { kind: K }>[] =>
  spans.filter((span): span is Extract<Span, { kind: K }> => span.kind === kind);

/** Whether two spans share a token. */
export const isOverlapping = (one: At, other: At): boolean => one.from < other.to && other.from < one.to;
