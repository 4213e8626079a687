/** Purchases for tests of money: only what matters is given. */
import type { Purchase, Setting } from '../../engine/types.ts';

export const bought = (
  on: string,
  what: string,
  price: string | null,
  more: Partial<Purchase> = {},
): Purchase => ({
  on,
  line: 10,
  what,
  ration: null,
  mass: null,
  bags: null,
  count: null,
  price,
  group: null,
  ...more,
});

/** A setting that holds a number. */
export const setTo = (what: string, value: number | string, on = '2026-05-01'): readonly Setting[] => [
  { on, line: 2, what, value, size: null, said: String(value) },
];
