/** How far one string, number or word of JSON reaches in a line. */

/** `to` is where it ends, or, when not `good`, the first character that cannot be right. */
export interface Reach {
  readonly to: number;
  readonly good: boolean;
}

const SPACE = /[ \t\r\n]*/y;
const SCALAR = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y;
const WORD = /[\w.+-]*/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const CUT_ESCAPE = /\\(?:u[0-9a-fA-F]{0,3})?$/y;

/** Where the match from `at` ends; -1 for none. */
const endOf = (pattern: RegExp, raw: string, at: number): number => {
  pattern.lastIndex = at;
  return pattern.test(raw) ? pattern.lastIndex : -1;
};

/** The first character from `at` on that is not white space. */
export const skipSpace = (raw: string, at: number): number => endOf(SPACE, raw, at);

/** Reads the string whose opening quote stands at `start`. A string that was cut off stops at the end of the line. */
export const reachString = (raw: string, start: number): Reach => {
  let at = start + 1;
  while (at < raw.length) {
    const code = raw.charCodeAt(at);
    if (code === 0x22) return { to: at + 1, good: true };
    if (code < 0x20) return { to: at, good: false };
    if (code === 0x5c) {
      const after = endOf(ESCAPE, raw, at);
      if (after < 0) return { to: endOf(CUT_ESCAPE, raw, at) < 0 ? at : raw.length, good: false };
      at = after;
    } else at += 1;
  }
  return { to: raw.length, good: false };
};

/** Reads a number, `true`, `false` or `null`. A word that the end of the line cuts off stops there. */
export const reachScalar = (raw: string, start: number): Reach => {
  const end = endOf(SCALAR, raw, start);
  if (end > 0) return { to: end, good: true };
  return { to: endOf(WORD, raw, start) === raw.length ? raw.length : start, good: false };
};
