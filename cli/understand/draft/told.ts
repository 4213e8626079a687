/** What the builders of drafts are handed, and the small readings that several of them share. */
import type { Line } from '../find/all.ts';
import { wordsUnder } from '../find/all.ts';
import type { Settled } from '../refine/settle-day.ts';
import { type NumberSpan, type QuantitySpan, spansOf, type TermSpan } from '../spans.ts';
import type { About } from '../types.ts';

/** One clause that tells something, with all that was found in it. */
export interface Told {
  /** The entry kind that is built. */
  readonly kind: string;
  readonly words: string;
  readonly line: Line;
  readonly days: Settled;
  readonly about: About;
  /** Groups named earlier in the same breath, for `moved them`. */
  readonly carried: readonly string[];
}

/** Fields in the ledger's own form; what is missing of the required ones; what was taken for granted. */
export interface Built {
  readonly fields: Readonly<Record<string, unknown>>;
  readonly missing: readonly string[];
  readonly assumed: readonly string[];
  /** True when a day in the words is the value of a field, and not the day of the record. */
  readonly keepsDay?: boolean;
  /** Further whole records of the same kind and day that the same words tell: two settings in one clause. */
  readonly also?: readonly Readonly<Record<string, unknown>>[];
  /** The same for the days that follow, one each: `lows of 38, 40 and 45 the next three nights`. */
  readonly daily?: readonly Readonly<Record<string, unknown>>[];
}

export type Build = (told: Told) => Built;

/** Leaves out what is null or an empty list. */
export const known = (fields: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(fields).filter(
      ([, value]) => value !== null && value !== undefined && !(Array.isArray(value) && value.length === 0),
    ),
  );

/** The required names that have no value. */
export const lacking = (
  fields: Readonly<Record<string, unknown>>,
  ...required: readonly string[]
): readonly string[] => required.filter((name) => fields[name] === null || fields[name] === undefined);

/** The keeper's own words under a span. */
export const under = (told: Told, span: { from: number; to: number }): string =>
  wordsUnder(told.words, told.line.tokens, span.from, span.to);

/** Words of the line in plain spelling, marks left out. */
export const plain = (told: Told): readonly string[] =>
  told.line.tokens.filter((token) => !token.isMark).map((token) => token.word);

/** Whether any of these words is in the line. */
export const says = (told: Told, ...words: readonly string[]): boolean => {
  const line = ` ${plain(told).join(' ')} `;
  return words.some((word) => line.includes(` ${word} `));
};

export const terms = (told: Told, list: TermSpan['list']): readonly TermSpan[] =>
  spansOf(told.line.spans, 'term').filter((span) => span.list === list);

/** The longest term of a list, the first of equally long ones. */
export const longestTerm = (told: Told, list: TermSpan['list']): TermSpan | null =>
  terms(told, list).reduce<TermSpan | null>(
    (best, span) => (best === null || span.to - span.from > best.to - best.from ? span : best),
    null,
  );

const instead = [['not'], ['instead', 'of'], ['rather', 'than']];
const naming = new Set(['number', '#', 'lot', 'ring', 'band']);

/** `three, not two`, `9 instead of 7`: the number that is taken back. */
const isTakenBack = ({ line: { tokens } }: Told, { from }: NumberSpan): boolean =>
  instead.some((words) => words.every((word, n) => tokens[from - words.length + n]?.word === word));

/** `number 17`, `#17` names a bird and counts none. */
const isName = ({ line: { tokens } }: Told, { from }: NumberSpan): boolean => {
  const before = tokens[from - 1]?.word ?? '';
  return naming.has(before) && (before !== '#' || tokens[from]?.touches === true);
};

/** The bare numbers that are meant; those taken back or naming something are left out. */
export const numbers = (told: Told): readonly NumberSpan[] => {
  const all = spansOf(told.line.spans, 'number').filter((span) => !isName(told, span));
  const meant = all.filter((span) => !isTakenBack(told, span));
  return meant.length > 0 ? meant : all;
};

export const quantities = (told: Told, dimension: string): readonly QuantitySpan[] =>
  spansOf(told.line.spans, 'quantity').filter((span) => span.dimension === dimension);

/** A number as short as it can be written. */
export const decimal = (value: number): string => String(Math.round(value * 10000) / 10000);

/** `25 lb`, as the ledger has it. */
export const written = (value: number, unit: string): string => `${decimal(value)} ${unit}`;

/** Exact money text, `117.00`. */
export const moneyText = (cents: number): string =>
  `${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')}`;
