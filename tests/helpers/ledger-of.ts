/** Small ledgers for tests, read with the shipped units and a handful of settings and figures. */
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import {
  type Book,
  foldTo,
  type Ledger,
  lineOf,
  type Measure,
  type NewEntry,
  printOf,
  readLedgerText,
} from '../../engine/ledger/index.ts';
import { unitsFrom } from '../../engine/rulebook/parse.ts';
import { unitsShape } from '../../engine/rulebook/shapes.ts';
import type { State } from '../../engine/types.ts';

const unitsFile = new URL('../../rules/units.yaml', import.meta.url);

/** Known names enough to try every way in which a setting or a figure can be read. */
export const book: Book = {
  units: unitsFrom(unitsShape.parse(parse(readFileSync(unitsFile, 'utf8')))),
  settings: {
    place: { dimension: 'text' },
    brooder: { dimension: 'size' },
    ground: { dimension: 'area' },
    lamps: { dimension: 'count' },
    bag: { dimension: 'mass' },
    'pen-cover': { dimension: 'yes-no' },
    'feed-price': { dimension: 'money' },
    'process-on': { dimension: 'day' },
  },
  figures: {
    'feed/bag': { unit: 'lb' },
    'feed/waste': { unit: 'percent' },
    'pasture/ground-rest': { unit: 'day' },
    'pasture/lowest-night': { unit: 'F', cells: () => ['14', '21', '28'] },
  },
};

/** Measured on a fixed day, with the limits given (none by default). */
export const measure = (limits: Measure['limits'] = {}): Measure => ({ limits, today: '2026-11-25' });

/** A line of a state file as it stands, or an entry, which is written as the program writes it. */
export type Line = NewEntry | string;

/** The text of a state file with these lines. */
export const textOf = (...lines: readonly Line[]): string =>
  lines.map((line) => `${typeof line === 'string' ? line : lineOf(line)}\n`).join('');

export const ledgerOf = (...lines: readonly Line[]): Ledger =>
  readLedgerText('flock.jsonl', textOf(...lines), book);

/** The state on a day, everything believed. */
export const stateOf = (ledger: Ledger, on = '2026-11-25'): State =>
  foldTo(ledger, { on, asOf: null, lines: null }, book).state;

/** An undo of a line as it stands. */
export const undoOf = (line: number, raw: Line): NewEntry => ({
  kind: 'undo',
  on: '2026-05-10',
  line,
  print: printOf(typeof raw === 'string' ? raw : lineOf(raw)),
});

/** A correction of a line as it stands. */
export const correctionOf = (line: number, raw: Line, fields: Record<string, unknown>): NewEntry => ({
  ...undoOf(line, raw),
  kind: 'correct',
  with: fields,
});

/** Fifty-two fast birds in the box, one of them dead. */
export const whites: NewEntry = {
  kind: 'arrive',
  on: '2026-04-09',
  group: 'whites',
  count: 52,
  dead: 1,
  bird: 'fast',
  hatched: '2026-04-07',
};

export const reds: NewEntry = {
  kind: 'arrive',
  on: '2026-04-16',
  group: 'reds',
  count: 26,
  bird: 'slow',
  hatched: '2026-04-14',
};
