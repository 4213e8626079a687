/** Draws that are the same everywhere and always. */

/** A sequence of numbers from 0 to 1 (Park and Miller 1988). */
export const numbersFrom = (start: number): (() => number) => {
  let state = start;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
};

/** Shuffles in place (Durstenfeld 1964). */
export const shuffle = (order: Int32Array, next: () => number): void => {
  for (let last = order.length - 1; last > 0; last -= 1) {
    const other = Math.floor(next() * (last + 1));
    const kept = order[last] ?? 0;
    order[last] = order[other] ?? 0;
    order[other] = kept;
  }
};
