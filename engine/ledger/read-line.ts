/** One line of the state file → its entry, or all that is wrong with it. */
import type { Problem } from '../problem.ts';
import type { Entry } from '../types.ts';
import { ledgerCodes } from './codes.ts';
import type { Around } from './fields/field.ts';
import { findingAt, inFileOrder, type Locate, locateIn, problemAt } from './finding.ts';
import type { Book } from './ledger.ts';
import { readEntry } from './read-entry.ts';
import { type Scan, scanLine } from './scan.ts';
import { touchesOf, touchesOfText } from './touches.ts';

export interface LineRead {
  readonly entry: Entry | null;
  readonly problems: readonly Problem[];
}

// What a message repeats of the file has to fit on a line of it.
const LONGEST_SHOWN = 60;

/** What the readers of fields may look at in a record whose values `locate` finds. */
export const aroundOf = (book: Book, record: Around['record'], locate: Locate): Around => {
  const writtenInFull = (path: string): string => {
    const { raw, span } = locate(path, 'value');
    const text = raw.slice(span.at, span.at + span.length);
    return text.startsWith('"') ? String(JSON.parse(text)) : text;
  };
  const written = (path: string): string => {
    const text = writtenInFull(path);
    return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
  };
  return { book, record, written, writtenInFull };
};

/** Whether a JSON value is an object, as every entry is. */
export const isRecord = (value: unknown): value is Around['record'] =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

// A crash can leave a line that stops in the middle or ends in zero bytes. Both are the same mishap wherever they
// stand: an entry that was never confirmed to the keeper.
const isTorn = (raw: string, scan: Scan & { ok: false }): boolean =>
  raw.endsWith('\0') || (scan.unfinished && raw.trimStart().startsWith('{'));

/** Where a second entry begins on one line: two files were joined where the first did not end its last line. */
const seamIn = (raw: string): number => raw.indexOf('{"kind":', 1);

const findUnparsable = (file: string, line: number, raw: string, scan: Scan & { ok: false }): Problem => {
  const code = isTorn(raw, scan) ? 'torn-line' : 'not-json';
  const seam = seamIn(raw);
  const at = seam > 0 ? seam : Math.min(scan.at, raw.length - 1);
  return {
    code,
    at: { file, line, column: at + 1, length: 1 },
    raw,
    data: seam > 0 ? { seam: seam + 1 } : {},
    grave: ledgerCodes[code],
    touches: touchesOfText(raw),
  };
};

/** What a line of JSON says; undefined where it is none. */
const parsed = (raw: string): unknown => {
  try {
    return JSON.parse(raw);
  } catch {
    return undefined;
  }
};

/** Whether a record is written as the program itself writes it; what is nested too deep to be written again is not. */
const isPlain = (record: unknown, raw: string): boolean => {
  try {
    return JSON.stringify(record) === raw;
  } catch {
    return false;
  }
};

/**
 * The entry of a line that stands as the program itself writes it and has nothing wrong; null for any other, which is then
 * looked at letter by letter. What reads back as the very same text names no key twice.
 */
const readPlain = (line: number, raw: string, book: Book): Entry | null => {
  const record = parsed(raw);
  if (!isRecord(record) || !isPlain(record, raw)) return null;
  let located: Locate | undefined;
  const locate: Locate = (path, under) => {
    located ??= locateIn(line, raw);
    return located(path, under);
  };
  const read = readEntry(aroundOf(book, record, locate), line, raw);
  return 'entry' in read ? read.entry : null;
};

/** Reads a line that is not blank. A line with any problem gives no entry: half of what it says may be wrong as well. */
export const readLine = (file: string, line: number, raw: string, book: Book): LineRead => {
  const plain = readPlain(line, raw, book);
  if (plain !== null) return { entry: plain, problems: [] };
  const scan = scanLine(raw);
  if (!scan.ok) return { entry: null, problems: [findUnparsable(file, line, raw, scan)] };

  const record: unknown = JSON.parse(raw);
  const locate = locateIn(line, raw, scan);
  if (!isRecord(record)) {
    const finding = { code: 'not-an-object', path: '', under: 'value', data: {} } as const;
    return { entry: null, problems: [problemAt(file, locate, finding, touchesOf(undefined, undefined))] };
  }
  const read = readEntry(aroundOf(book, record, locate), line, raw);
  const findings = [
    ...scan.duplicates.map((path) => ({ ...findingAt('duplicate-key', path), under: 'key' }) as const),
    ...('findings' in read ? read.findings : []),
  ];
  if (findings.length === 0 && 'entry' in read) return { entry: read.entry, problems: [] };
  const touches = touchesOf(record.kind, record.group);
  return {
    entry: null,
    problems: inFileOrder(findings.map((each) => problemAt(file, locate, each, touches))),
  };
};
