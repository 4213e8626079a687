/** Which earlier line an undo or a correction means, and whether it may. */
import type { Entry } from '../types.ts';
import type { Around } from './fields/field.ts';
import { countOf, textOf } from './kinds/take.ts';
import type { Ledger } from './ledger.ts';
import { printOf } from './print.ts';
import { isRecord } from './read-line.ts';
import { scanLine } from './scan.ts';

/**
 * Why a line cannot be meant: nothing stands there, it comes later, it is another line than the one told, several lines are
 * as it was and any of them may be meant, or it has no fields to correct.
 */
export type Mismatch = 'missing' | 'later' | 'another-line' | 'several' | 'not-correctable';

export type Target = { readonly line: number } | { readonly mismatch: Mismatch };

export const isRevision = (entry: Entry): boolean => entry.kind === 'undo' || entry.kind === 'correct';

/** The JSON object on a line of the file, also of a line that is no good entry; null when it is no object. */
export const recordOn = (ledger: Ledger, line: number): Around['record'] | null => {
  const raw = ledger.lines[line - 1] ?? '';
  const value: unknown = scanLine(raw).ok ? JSON.parse(raw) : null;
  return isRecord(value) ? value : null;
};

const isCorrectable = (record: Around['record'] | null): boolean =>
  record !== null && record.kind !== 'undo' && record.kind !== 'correct';

const isBlank = (raw: string): boolean => raw.trim() === '';

/** By fingerprint: the lines that have it, in file order, blank ones left out. */
const linesByPrint = (lines: readonly string[]): ReadonlyMap<string, readonly number[]> => {
  const found = new Map<string, number[]>();
  lines.forEach((raw, index) => {
    if (isBlank(raw)) return;
    const print = printOf(raw);
    const others = found.get(print);
    if (others === undefined) found.set(print, [index + 1]);
    else others.push(index + 1);
  });
  return found;
};

/**
 * Finds the line that an undo or a correction is about. Any line that is not blank can be undone, also a broken one.
 * Joining two copies of a file moves lines, so the number is only where to look first: a line that is not there any more is
 * found by its fingerprint, above the line that speaks of it.
 */
export const findTargets = (ledger: Ledger): ((revision: Entry) => Target) => {
  // Worked out once, and only where a line was moved: it costs a fingerprint of every line.
  let known: ReadonlyMap<string, readonly number[]> | undefined;
  const movedTo = (revision: Entry, print: string): Target => {
    known ??= linesByPrint(ledger.lines);
    const [first, ...others] = (known.get(print) ?? []).filter((line) => line < revision.line);
    if (first === undefined) return { mismatch: 'another-line' };
    // With its writing time every further one is a copy, which counts for nothing; without, each is a record of its own.
    const isCopied = typeof recordOn(ledger, first)?.written === 'string';
    return others.length === 0 || isCopied ? { line: first } : { mismatch: 'several' };
  };
  const lineOf = (revision: Entry): Target => {
    const line = countOf(revision, 'line');
    const print = textOf(revision, 'print');
    const raw = ledger.lines[line - 1] ?? '';
    if (line < revision.line && !isBlank(raw) && printOf(raw) === print) return { line };
    const moved = movedTo(revision, print);
    if ('line' in moved || moved.mismatch === 'several') return moved;
    if (line >= revision.line) return { mismatch: 'later' };
    return { mismatch: isBlank(raw) ? 'missing' : 'another-line' };
  };
  return (revision) => {
    const target = lineOf(revision);
    const isRefused =
      revision.kind === 'correct' && 'line' in target && !isCorrectable(recordOn(ledger, target.line));
    return isRefused ? { mismatch: 'not-correctable' } : target;
  };
};
