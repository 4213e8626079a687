/** Which entries stand once undos and corrections are taken into account, as far as the ledger is believed. */
import type { Problem } from '../problem.ts';
import type { Entry, Moment } from '../types.ts';
import { type Copy, findCopies } from './copies.ts';
import { inWritingOrder } from './day-order.ts';
import { type Locate, locateIn, problemAt } from './finding.ts';
import type { Book, Ledger } from './ledger.ts';
import { readEntry } from './read-entry.ts';
import { aroundOf, isRecord } from './read-line.ts';
import { findTargets, isRevision, recordOn, type Target } from './target.ts';
import { touchesOf } from './touches.ts';

/** How much of the ledger is believed; the part of a Moment that concerns knowing, not the day asked about. */
export type Belief = Pick<Moment, 'asOf' | 'lines' | 'without'>;

/** An entry that counts, with the corrections that made it what it is, oldest first. */
export interface Standing {
  readonly entry: Entry;
  readonly corrections: readonly Entry[];
}

export interface Settled {
  /** In file order, without undos and corrections. */
  readonly standing: readonly Standing[];
  /** Everything believed, in file order, also what was taken back. Undos and corrections name the line as it stands here. */
  readonly believed: readonly Entry[];
  /** Entries that repeat an earlier one with its writing time, and therefore do not count; those taken back are left out. */
  readonly copies: readonly Copy[];
  /** Problems of lines that nobody undid or put right. */
  readonly problems: readonly Problem[];
  /** How many lines are believed. */
  readonly lines: number;
}

const dayWritten = (entry: Entry): string => entry.written?.slice(0, 10) ?? entry.on;

const isBelieved = (entry: Entry, { asOf, lines }: Belief): boolean =>
  (lines === null || entry.line <= lines) && (asOf === null || dayWritten(entry) <= asOf);

const replacementsOf = (correction: Entry): Readonly<Record<string, unknown>> => {
  const value: unknown = JSON.parse(String(correction.fields.with));
  return isRecord(value) ? value : {};
};

/** Finds the values of an entry: in the last correction that told them, else in its own line. */
export const locateStanding = (own: Pick<Entry, 'line' | 'raw'>, corrections: readonly Entry[]): Locate => {
  const original = locateIn(own.line, own.raw);
  const told = corrections.map((correction) => ({
    names: Object.keys(replacementsOf(correction)),
    locate: locateIn(correction.line, correction.raw, undefined, 'with'),
  }));
  return (path, under) => {
    const [field = ''] = path.split('.');
    return (told.findLast(({ names }) => names.includes(field))?.locate ?? original)(path, under);
  };
};

type Corrected = { readonly standing: Standing } | { readonly problems: readonly Problem[] };

const correctLine = (ledger: Ledger, line: number, corrections: readonly Entry[], book: Book): Corrected => {
  const raw = ledger.lines[line - 1] ?? '';
  const told = [recordOn(ledger, line) ?? {}, ...corrections.map(replacementsOf)].flatMap(Object.entries);
  const record = Object.fromEntries([...new Map(told)].filter(([, value]) => value !== null));
  const locate = locateStanding({ line, raw }, corrections);
  const read = readEntry(aroundOf(book, record, locate), line, raw);
  if ('entry' in read) return { standing: { entry: read.entry, corrections } };
  const touches = touchesOf(record.kind, record.group);
  return { problems: read.findings.map((each) => problemAt(ledger.file, locate, each, touches)) };
};

interface Revisions {
  readonly undone: ReadonlySet<number>;
  readonly corrections: ReadonlyMap<number, readonly Entry[]>;
}

// Undos from the last line to the first, since one counts only if nothing after it took it back: an undo that is itself
// undone leaves its line standing. Corrections by the time of writing: so the later one counts whichever of two copies of
// a file came first when they were joined.
const revise = (
  believed: readonly Entry[],
  copies: readonly Copy[],
  targetOf: (revision: Entry) => Target,
  without: readonly number[],
): Revisions => {
  // A line left out takes nothing back either: without a correction, the line it put right is as it was.
  const undone = new Set<number>(without);
  for (const undo of believed.filter(({ kind }) => kind === 'undo').reverse()) {
    const target = targetOf(undo);
    if (!undone.has(undo.line) && 'line' in target) undone.add(target.line);
  }
  // Putting a copy right puts right what it is a copy of. Taking a copy back takes back nothing else.
  const firstOf = new Map(copies.map(({ entry, first }) => [entry.line, first]));
  const corrections = new Map<number, Entry[]>();
  const isCorrection = ({ kind }: Entry): boolean => kind === 'correct';
  const correcting = believed.some(isCorrection) ? inWritingOrder(believed).filter(isCorrection) : [];
  for (const correction of correcting) {
    const target = targetOf(correction);
    if (undone.has(correction.line) || 'mismatch' in target) continue;
    const corrected = firstOf.get(target.line) ?? target.line;
    const others = corrections.get(corrected);
    if (others === undefined) corrections.set(corrected, [correction]);
    else others.push(correction);
  }
  return { undone, corrections };
};

/** An undo or a correction with the line that it was found to mean, where joining two copies of the file moved that. */
const pointed = (entry: Entry, targetOf: (revision: Entry) => Target): Entry => {
  const target = isRevision(entry) ? targetOf(entry) : { mismatch: 'missing' };
  const isMoved = 'line' in target && target.line !== entry.fields.line;
  return isMoved ? { ...entry, fields: { ...entry.fields, line: target.line } } : entry;
};

/** Settles a ledger. Pure; the time it takes grows with the number of lines. */
export const settle = (ledger: Ledger, belief: Belief, book: Book): Settled => {
  const believed = ledger.entries.filter((entry) => isBelieved(entry, belief));
  const copies = findCopies(believed);
  const repeated = new Set(copies.map(({ entry }) => entry));
  const counting = believed.filter((entry) => !repeated.has(entry));
  const targetOf = findTargets(ledger);
  const { undone, corrections } = revise(counting, copies, targetOf, belief.without ?? []);
  const corrected = new Map(
    [...corrections]
      .filter(([line]) => !undone.has(line))
      .map(([line, each]) => [line, correctLine(ledger, line, each, book)]),
  );

  const standing = counting
    .filter((entry) => !isRevision(entry) && !undone.has(entry.line) && !corrected.has(entry.line))
    .map((entry): Standing => ({ entry, corrections: [] }));
  const problems = ledger.problems.filter(({ at }) => {
    const isKnown = belief.lines === null || at.line <= belief.lines;
    return isKnown && !undone.has(at.line) && !corrected.has(at.line);
  });
  for (const result of corrected.values()) {
    if ('standing' in result) standing.push(result.standing);
    else for (const problem of result.problems) problems.push(problem);
  }
  return {
    standing: standing.sort((one, other) => one.entry.line - other.entry.line),
    believed: believed.map((entry) => pointed(entry, targetOf)),
    copies: copies.filter(({ entry, first }) => !undone.has(entry.line) && !undone.has(first)),
    problems,
    lines:
      belief.asOf === null
        ? Math.min(belief.lines ?? Number.POSITIVE_INFINITY, ledger.lines.length)
        : (believed.at(-1)?.line ?? 0),
  };
};
