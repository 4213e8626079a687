/** Whether there is a terminal to chat in; imports nothing, so that the one-shot path can ask without loading Ink. */

/** What has to be known of a stream; `process.stdin` and `process.stdout` fit. */
export interface Screen {
  readonly isTTY?: boolean;
  readonly columns?: number;
  readonly rows?: number;
}

/**
 * True when both ends are terminals that can move a cursor and have a size. A serial line reports 0 rows, on which Ink
 * would wipe the screen at every key; two rows is the least that holds the prompt and a row of answer.
 */
export const canChat = (
  stdin: Pick<Screen, 'isTTY'>,
  stdout: Screen,
  env: Readonly<Record<string, string | undefined>>,
): boolean =>
  stdin.isTTY === true &&
  stdout.isTTY === true &&
  (stdout.columns ?? 0) > 0 &&
  (stdout.rows ?? 0) > 1 &&
  env.TERM !== 'dumb';
