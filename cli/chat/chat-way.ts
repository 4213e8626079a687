/** In which way there can be a chat; imports nothing, so that the one-shot path can ask without loading Ink. */

/** What has to be known of a stream; `process.stdin` and `process.stdout` fit. */
export interface Screen {
  readonly isTTY?: boolean;
  readonly columns?: number;
  readonly rows?: number;
}

/**
 * `drawn` keeps a prompt with history and Tab at the foot of the screen. `rows` and `heard` write each line once and
 * never go back over it: in rows for the eye, on a terminal that can do no more; or in sentences, for a screen reader.
 */
export type ChatWay = 'drawn' | 'rows' | 'heard';

/** Both names that a keeper may know it by: our own, and the one that Ink programs share. */
const isHeard = (env: Readonly<Record<string, string | undefined>>): boolean =>
  !['', 'no', undefined].includes(env.PENSIDE_PLAIN) || env.INK_SCREEN_READER === 'true';

/**
 * The way to chat on these streams; null where one of them is no terminal. Drawing takes a cursor that can be moved and a
 * size: a serial line reports 0 rows, on which Ink would wipe the screen at every key; two rows is the least that holds
 * the prompt and a row of answer.
 */
export const chatWay = (
  stdin: Pick<Screen, 'isTTY'>,
  stdout: Screen,
  env: Readonly<Record<string, string | undefined>>,
): ChatWay | null => {
  if (stdin.isTTY !== true || stdout.isTTY !== true) return null;
  if (isHeard(env)) return 'heard';
  return (stdout.columns ?? 0) > 0 && (stdout.rows ?? 0) > 1 && env.TERM !== 'dumb' ? 'drawn' : 'rows';
};
