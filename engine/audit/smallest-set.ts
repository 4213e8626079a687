/** Which few of many things, taken together, are enough: found by halving rather than by trying each. */

/** Whether these together are enough. All of them are; none of them is not. */
export type Enough<T> = (some: readonly T[]) => Promise<boolean>;

/** How many of the first are needed along with those kept: the place where not enough becomes enough. */
const shortest = async <T>(all: readonly T[], kept: readonly T[], isEnough: Enough<T>): Promise<number> => {
  let [few, many] = [0, all.length];
  while (many - few > 1) {
    const middle = Math.floor((few + many) / 2);
    if (await isEnough([...kept, ...all.slice(0, middle)])) many = middle;
    else few = middle;
  }
  return many;
};

/** A set that is enough, less whatever turns out not to be needed after all. */
export const leaveOutNeedless = async <T>(set: readonly T[], isEnough: Enough<T>): Promise<readonly T[]> => {
  let left = set;
  for (const each of set) {
    const rest = left.filter((other) => other !== each);
    if (rest.length > 0 && (await isEnough(rest))) left = rest;
  }
  return left;
};

/**
 * A set that is enough and from which nothing can be left out. It takes about log₂ n trials for each thing in it. Which of
 * several such sets is found hangs only on the order they are given in.
 */
export const findSmallestSet = async <T>(all: readonly T[], isEnough: Enough<T>): Promise<readonly T[]> => {
  let rest = all;
  let kept: readonly T[] = [];
  while (rest.length > 0 && !(await isEnough(kept))) {
    const many = await shortest(rest, kept, isEnough);
    kept = [...kept, ...rest.slice(many - 1, many)];
    rest = rest.slice(0, many - 1);
  }
  return leaveOutNeedless(kept, isEnough);
};
