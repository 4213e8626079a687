/** The only door to the engine: open a ledger over a rulebook, then ask, look up, check and record. */
import { answer } from './ask/ask.ts';
import { lookBack } from './ask/look-back.ts';
import { type World, workingsOn } from './ask/world.ts';
import type { Day } from './day.ts';
import { allFacts } from './facts/index.ts';
import {
  type Appended,
  appendEntries,
  type Belief,
  type Book,
  checkLedger,
  foldTo,
  type Ledger,
  limitIds,
  type Measure,
  type NewEntry,
  readLedgerFile,
  readLedgerText,
  settle,
  type Tried,
  tryAppend,
} from './ledger/index.ts';
import type { Problem } from './problem.ts';
import type { Known } from './rulebook/checks/index.ts';
import { inForce, rememberSorted } from './rulebook/figures.ts';
import type { Answer, Entry, Moment, Request, Rulebook, State, Value } from './types.ts';
import { toBase } from './units.ts';

export type { Appended, NewEntry, Tried } from './ledger/index.ts';
export { freeName, kindNamed, kinds, printOf } from './ledger/index.ts';

/** What a rulebook is checked against. */
export const known: Known = { facts: [...allFacts.values()], figures: limitIds };

/** A ledger opened over a rulebook. Everything is worked out anew for each call: nothing is stored but the file. */
export interface Engine {
  readonly book: Rulebook;
  readonly file: string;
  /** Raw lines of the file, line 1 first. */
  readonly lines: readonly string[];
  /** What the entries add up to at a moment. */
  state(moment: Moment): State;
  ask(request: Request): Promise<Answer>;
  /** One fact on a day, in base units; null when unknown. */
  fact(id: string, group: string | null, moment: Moment): Value | null;
  /** The entries that count, undone ones left out, in file order. */
  standing(): readonly Entry[];
  /** Everything wrong with the ledger as believed, in file order. */
  check(today: Day, belief?: Belief): readonly Problem[];
  /** The ledger with these entries more, without writing: its problems and the lines it would have. */
  try(entries: readonly NewEntry[], today: Day): Tried;
  /** Writes entries told in one breath, all or none. The engine itself does not change: open it again to read them. */
  record(entries: readonly NewEntry[], today: Day): Promise<Appended>;
}

const bookFor = (book: Rulebook): Book => ({
  units: book.units,
  settings: book.words.settings,
  figures: book.figures,
});

const limitsOn = (book: Rulebook, on: Day): Measure => ({
  today: on,
  limits: Object.fromEntries(
    limitIds.flatMap((id) => {
      const figure = book.figures[id];
      const value = figure === undefined ? undefined : inForce(figure, on).value;
      return figure === undefined || typeof value !== 'number'
        ? []
        : [[id, toBase(book.units, { value, unit: figure.unit })]];
    }),
  ),
});

const openLedger = (book: Rulebook, ledger: Ledger, text: () => string): Engine => {
  const reading = bookFor(book);
  const sortKeys = rememberSorted();
  const worldAt = (moment: Moment): World => {
    const { state, problems } = foldTo(ledger, moment, reading);
    return { book, facts: allFacts, state, problems, sortKeys };
  };
  return {
    book,
    file: ledger.file,
    lines: ledger.lines,
    state: (moment) => foldTo(ledger, moment, reading).state,
    ask: (asked) => {
      const request = lookBack(book, asked);
      return answer(worldAt(request.moment), request);
    },
    fact: (id, group, moment) => workingsOn(worldAt(moment), moment.on, null, []).step(id, group).value,
    standing: () => settle(ledger, { asOf: null, lines: null }, reading).standing.map(({ entry }) => entry),
    check: (today, belief = { asOf: null, lines: null }) => {
      const moment = { on: today, ...belief };
      const { problems } = foldTo(ledger, moment, reading);
      return [...problems, ...checkLedger(ledger, belief, reading, limitsOn(book, today))].sort(
        (a, b) => a.at.line - b.at.line || a.at.column - b.at.column,
      );
    },
    try: (entries, today) => tryAppend(ledger.file, text(), entries, reading, limitsOn(book, today)),
    record: (entries, today) => appendEntries(ledger.file, entries, reading, limitsOn(book, today)),
  };
};

/** Opens the state file at a path; one that is not there yet is an empty ledger. */
export const openFile = (book: Rulebook, path: string): Engine => {
  const ledger = readLedgerFile(path, bookFor(book));
  return openLedger(book, ledger, () => `${ledger.lines.join('\n')}\n`);
};

/** Opens the text of a ledger, as for the demo; recording into it fails unless `file` is a path that may be written. */
export const openText = (book: Rulebook, file: string, text: string): Engine =>
  openLedger(book, readLedgerText(file, text, bookFor(book)), () => text);
