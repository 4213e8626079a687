/** Settings of a place for plain states, by what they are and what they are worth in base units. */
import type { Setting, State, Value } from '../../engine/types.ts';

export const settingsOf = (given: Readonly<Record<string, Value>>): State['settings'] =>
  Object.fromEntries(
    Object.entries(given).map(([what, value], index): [string, readonly Setting[]] => [
      what,
      [{ what, value, size: null, said: String(value), on: '2026-04-01', line: 100 + index }],
    ]),
  );
