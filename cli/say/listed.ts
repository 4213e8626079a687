/** Several things in one breath. */

/** `a`, `a and b`, `a, b and c`. */
export const listed = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
