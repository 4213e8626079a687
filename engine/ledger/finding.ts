/** Something wrong inside an entry, and how it becomes a problem with a place in the file. */
import type { Problem } from '../problem.ts';
import { type LedgerCode, ledgerCodes } from './codes.ts';
import { type Part, type Scan, type Span, scanLine } from './scan.ts';

/** What is wrong, by the path of the value in its entry; the empty path is the entry itself. */
export interface Finding {
  readonly code: LedgerCode;
  readonly path: string;
  /** What the caret stands under; `end` is where a missing field would go. */
  readonly under: 'value' | 'key' | 'end';
  readonly data: Problem['data'];
}

/** Something wrong with the value of a field, or at a path inside it. */
export const findingAt = (code: LedgerCode, path: string, data: Problem['data'] = {}): Finding => ({
  code,
  path,
  under: 'value',
  data: { field: path, ...data },
});

/** A field that is not there and should be. */
export const findingMissing = (field: string, data: Problem['data'] = {}): Finding => ({
  code: 'missing-field',
  path: field,
  under: 'end',
  data: { field, ...data },
});

/** A stretch of one line of the file. */
export interface Spot {
  readonly line: number;
  readonly raw: string;
  readonly span: Span;
}

/** Finds the part of the file that gave an entry the value at a path. */
export type Locate = (path: string, under: Finding['under']) => Spot;

/** Finds values in one line. `inside` is the path of the object that holds them, empty for the line itself. */
export const locateIn = (line: number, raw: string, scan: Scan = scanLine(raw), inside = ''): Locate => {
  const parts: ReadonlyMap<string, Part> = scan.ok ? scan.parts : new Map();
  const whole: Span = parts.get(inside)?.value ?? { at: 0, length: raw.length };
  return (path, under) => {
    const part = parts.get([inside, path].filter((each) => each !== '').join('.'));
    if (under === 'end' || part === undefined) {
      return { line, raw, span: { at: Math.max(0, whole.at + whole.length - 1), length: 1 } };
    }
    return { line, raw, span: under === 'key' ? (part.key ?? part.value) : part.value };
  };
};

/** A problem at the place that `locate` finds for it. */
export const problemAt = (
  file: string,
  locate: Locate,
  finding: Finding,
  touches: readonly string[],
): Problem => {
  const { line, raw, span } = locate(finding.path, finding.under);
  return {
    code: finding.code,
    at: { file, line, column: span.at + 1, length: Math.max(1, span.length) },
    raw,
    data: finding.data,
    grave: ledgerCodes[finding.code],
    touches,
  };
};

/** File order: by line, then by column. Problems at one place keep their order. */
export const inFileOrder = (problems: readonly Problem[]): readonly Problem[] =>
  [...problems].sort((one, other) => one.at.line - other.at.line || one.at.column - other.at.column);
