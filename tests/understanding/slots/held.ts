/** One draft beside its label, and the small readings of fields that all checks share. */
import type { Draft } from '../../../cli/understand/types.ts';
import type { Rulebook } from '../../../engine/types.ts';
import { readQuantity, toBase } from '../../../engine/units.ts';
import type { Fault } from './judged.ts';
import { type Slots, textOf } from './label.ts';

export interface Held {
  readonly book: Rulebook;
  readonly text: string;
  readonly slots: Slots;
  readonly draft: Draft;
  readonly assumed: readonly string[];
}

export type Check = (held: Held) => readonly Fault[];

/** The day on which the labelled lines are spoken. */
export const spokenOn = '2026-05-14';

/** A quantity of the ledger in base units; null where it is none. */
export const inBase = ({ book }: Held, found: unknown): number | null => {
  const quantity = readQuantity(book.units, String(found));
  return quantity === undefined ? null : toBase(book.units, quantity);
};

/** The number in front of a unit, `48` of `48 F`. */
export const bare = (found: unknown): number => Number.parseFloat(String(found));

/** Whether a number stands in the words in digits. */
export const saysNumber = (text: string, value: number): boolean =>
  new RegExp(`(?<![\\d.])${value}(?![\\d.])`).test(text);

/** The unit of a label. */
export const unitOf = (slots: Slots): string | null => textOf(slots.unit);
