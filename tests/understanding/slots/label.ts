/** The slots of a labelled line as its writer gave them, and what their words and numbers mean. */
import { findNumbers, numberAt } from '../../../cli/understand/find/number.ts';
import { tokenise } from '../../../cli/understand/tokens.ts';

/** As in the files: numbers where the writer wrote numbers, words as typed otherwise. */
export type Slots = Readonly<Record<string, unknown>>;

/** Kilograms in one of the units that the lines were written with; a bag is that of the place on which they are heard. */
const kilograms: Readonly<Record<string, number>> = {
  kg: 1,
  kilo: 1,
  kilogram: 1,
  g: 0.001,
  gram: 0.001,
  lb: 0.45359237,
  pound: 0.45359237,
  pounder: 0.45359237,
  '#': 0.45359237,
  oz: 0.028349523125,
  ounce: 0.028349523125,
  stone: 6.35029318,
  stane: 6.35029318,
  ton: 907.18474,
  tonne: 1000,
  hundredweight: 50.80234544,
  bag: 22.6796185,
  sack: 22.6796185,
  scoop: 1.36077711,
};

const bagWords = new Set(['bag', 'sack', 'poke']);

const singular = (unit: string): string =>
  unit
    .toLowerCase()
    .trim()
    .replace(/^(lb|kg)s$/, '$1')
    .replace(/^(kilo|kilogram|gram|pound|ounce|bag|sack|ton|tonne|scoop|bale)s$/, '$1');

export const isBagUnit = (unit: unknown): boolean => typeof unit === 'string' && bagWords.has(singular(unit));

/** A weight in kilograms, or null for a unit that measures none here: a coffee can, a load. */
export const kilogramsOf = (amount: number, unit: string | null): number | null => {
  const one = kilograms[singular(unit ?? 'lb')];
  return one === undefined ? null : amount * one;
};

/** `4 lb 6 oz`, `2.3 kg`, as a label may write a weight; null where it is none. */
export const weightOf = (label: unknown, unit: string | null): number | null => {
  if (typeof label === 'number') return kilogramsOf(label, unit);
  if (typeof label !== 'string') return null;
  const parts = [...label.matchAll(/(\d+(?:\.\d+)?)\s*([a-z#]+)?/gi)];
  const weights = parts.map(([, value, of], at) => kilogramsOf(Number(value), of ?? (at > 0 ? 'oz' : unit)));
  return weights.length === 0 || weights.includes(null)
    ? null
    : weights.reduce<number>((sum, each) => sum + (each ?? 0), 0);
};

/** The first number of a label, in digits or in words; null for none. */
export const numberOf = (label: unknown): number | null => {
  if (typeof label === 'number') return label;
  if (typeof label !== 'string') return null;
  const tokens = tokenise(label);
  for (const at of tokens.keys()) {
    const found = numberAt(tokens, at);
    if (found !== null) return found.value;
  }
  return null;
};

/** A sum of money as a label may write it: `4.50 a bag`, `twelve pound eighty`, `eleven fifty each`. */
export const moneyOf = (label: unknown): number | null => {
  const first = numberOf(label);
  if (typeof label !== 'string' || first === null || /\d/.test(label)) return first;
  const spoken = findNumbers(tokenise(label)).map(({ value }) => value);
  const pence = spoken[1];
  return pence !== undefined && pence >= 10 && pence < 100 ? first + pence / 100 : first;
};

export const textOf = (label: unknown): string | null => (typeof label === 'string' ? label : null);

/** Whether two amounts are the same but for rounding. */
export const isNear = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 0.011 * Math.max(Math.abs(one), Math.abs(other), 0.001);

export type Group = 'whites' | 'reds' | 'both';

const sides: readonly (readonly [Group, RegExp])[] = [
  ['both', /\b(?:both|all|each|every|the two)\b/],
  ['whites', /whit|\bwite/],
  ['reds', /\breds?\b|colou?r|carrot|ginger/],
  ['reds', /slow|young|wee|small|little|littl|\blil|bab|brooder|chick|shed|later|tank|garage|second|fluff/],
  ['whites', /fast|meat|\bbig|large|grass|\bpen\b|\bark\b|older|\bfat|chonk|field|pasture/],
];

/** Which of the two groups a label speaks of; null where it names neither. */
export const groupOf = (label: unknown): Group | null => {
  const said = (Array.isArray(label) ? label.join(' ') : String(label ?? '')).toLowerCase();
  if (/white/.test(said) && /red/.test(said)) return 'both';
  return sides.find(([, pattern]) => pattern.test(said))?.[0] ?? null;
};
