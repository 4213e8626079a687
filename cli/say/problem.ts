/** A problem in words: where it is, the line itself with a caret, what is wrong, and what to type instead. */

import type { Problem } from '../../engine/problem.ts';
import { clean } from './clean.ts';
import { columnsOf } from './columns.ts';
import { wordsOf } from './problem-words.ts';

/** A long line is shown around the caret only, so that the caret never wraps away from what it points at. */
const widest = 76;

const around = (raw: string, column: number): { readonly text: string; readonly caret: number } => {
  if (raw.length <= widest) return { text: raw, caret: column - 1 };
  const start = Math.max(0, Math.min(column - 1 - widest / 2, raw.length - widest));
  // Half of a character that was cut in two is not shown.
  const text = raw.slice(start, start + widest).replace(/^[\udc00-\udfff]|[\ud800-\udbff]$/g, ' ');
  return { text, caret: column - 1 - start };
};

/** One message on one line, as editors and commit hooks read it: `flock.jsonl:2:9: unknown-kind: there is no …`. */
export const sayProblemShort = (problem: Problem): string => {
  const { file, line, column } = problem.at;
  const note = problem.grave ? '' : 'take note: ';
  return `${clean(file)}:${line}:${column}: ${problem.code}: ${note}${clean(wordsOf(problem).wrong)}`;
};

/** The lines of one message: place, the user's own line, a caret under it, what is wrong, what to do. */
export const sayProblem = (problem: Problem): readonly string[] => {
  const { file, line, column, length = 1 } = problem.at;
  const { wrong, next } = wordsOf(problem);
  const place = `${clean(file)}, line ${line}, column ${column}: ${problem.grave ? '' : 'take note: '}${clean(wrong)}`;
  if (problem.raw === '') return next === null ? [place] : [place, `  ${clean(next)}`];
  // Each character the terminal would not show takes one place all the same, so that the caret stays right.
  const shown = around([...problem.raw].map((char) => clean(char) || ' ').join(''), column);
  // Counted in terminal columns, as some characters take two of them and some none.
  const before = columnsOf(shown.text.slice(0, shown.caret));
  const under = columnsOf(shown.text.slice(shown.caret, shown.caret + length));
  const caret = `${' '.repeat(before)}${'^'.repeat(Math.max(1, under))}`;
  return [place, `  ${shown.text}`, `  ${caret}`, ...(next === null ? [] : [`  ${clean(next)}`])];
};
