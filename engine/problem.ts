/** What is wrong with a ledger line or a rule file: a code with its place and data, never prose. */

/** A place in a file; lines and columns count from 1. `length` is how many characters the caret underlines. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly length?: number;
}

/**
 * One thing wrong. `raw` is the user's own line, untouched, so that a caret under it is always right.
 * `touches` names what the problem makes doubtful (entry kinds, or groups as `group:NAME`);
 * a question is refused only by a problem that touches its facts. `grave` is false for mere warnings.
 */
export interface Problem {
  readonly code: string;
  readonly at: Place;
  readonly raw: string;
  readonly data: Readonly<Record<string, string | number | readonly string[]>>;
  readonly grave: boolean;
  readonly touches: readonly string[];
}
