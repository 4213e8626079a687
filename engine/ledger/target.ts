/** Which earlier line an undo or a correction means, and whether it may. */
import type { Entry } from '../types.ts';
import type { Around } from './fields/field.ts';
import { countOf, textOf } from './kinds/take.ts';
import type { Ledger } from './ledger.ts';
import { printOf } from './print.ts';
import { isRecord } from './read-line.ts';
import { scanLine } from './scan.ts';

/** Why a line cannot be meant: nothing stands there, it comes later, it is another line than the one told, or it has no fields to correct. */
export type Mismatch = 'missing' | 'later' | 'another-line' | 'not-correctable';

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

/** The line that an undo or a correction is about. Any line that is not blank can be undone, also a broken one. */
export const targetOf = (ledger: Ledger, revision: Entry): Target => {
  const line = countOf(revision, 'line');
  if (line >= revision.line) return { mismatch: 'later' };
  const raw = ledger.lines[line - 1] ?? '';
  if (raw.trim() === '') return { mismatch: 'missing' };
  if (printOf(raw) !== textOf(revision, 'print')) return { mismatch: 'another-line' };
  if (revision.kind === 'correct' && !isCorrectable(recordOn(ledger, line)))
    return { mismatch: 'not-correctable' };
  return { line };
};
