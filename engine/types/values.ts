/** Numbers with units, and what a fact can be worth. Imports nothing. */

/** A number with its unit, as typed or as published; units are those of `rules/units.yaml`. */
export interface Quantity {
  readonly value: number;
  readonly unit: string;
}

/** What a fact can be worth. Numbers are in the base unit of their dimension; days and choices are text. */
export type Value = number | boolean | string;
