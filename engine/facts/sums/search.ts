/** Searching the whole numbers for the first at which something holds. */

/**
 * The first whole number from `first` to `last` for which `holds`, or undefined. `holds` must stay true once it is true,
 * so that halving finds it.
 */
export const firstWhere = (
  first: number,
  last: number,
  holds: (n: number) => boolean,
): number | undefined => {
  if (last < first || !holds(last)) return undefined;
  let low = first;
  let high = last;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
};
