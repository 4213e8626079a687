/** Rows below the prompt that a window made lower would take away. */

/** The quiet row, and the one that Ink ends its drawing on. */
const below = 2;

/** Down as often as there are rows to keep, which scrolls where there are none, and up again in the same column. */
const makeRows = `${'\x1bD'.repeat(below)}\x1b[${below}A`;

/**
 * Has the rows below the prompt made again on every change of the window's size, before Ink draws: a terminal made lower
 * drops the empty ones first, and Ink, counting upwards from where they were, would take away rows of the last answer.
 * The function given back ends it.
 */
export const keepRowsBelow = (stdout: NodeJS.WriteStream): (() => void) => {
  const make = (): void => {
    stdout.write(makeRows);
  };
  stdout.prependListener('resize', make);
  return () => {
    stdout.off('resize', make);
  };
};
