/** Says that something takes long, once it does. */

/** What takes longer than this is said to be going on, in milliseconds; anything said about less would only flicker. */
export const slow = 1000;

/** The words for it. */
export const stillWorking = (on: string): string => `Still working on: ${on}`;

/** Does some work. `tell` is called once that has taken long; what it gives back takes the telling away, before the outcome is given. */
export const whileWaiting = async <T>(tell: () => () => void, work: () => Promise<T>): Promise<T> => {
  let takeAway = (): void => undefined;
  const late = setTimeout(() => {
    takeAway = tell();
  }, slow);
  try {
    return await work();
  } finally {
    clearTimeout(late);
    takeAway();
  }
};
