/** The only door to the engine: open a ledger over a rulebook, then ask, look up, check and record. */
import { answer } from './ask/ask.ts';
import { lookBack } from './ask/look-back.ts';
import { layOwnRules, type OwnBook } from './ask/own-book.ts';
import { factsBehind as factsBelow } from './ask/reach.ts';
import { rememberWorkings, type World, workingsOn } from './ask/world.ts';
import { type Audit, openAudit } from './audit/audit.ts';
import type { Look } from './audit/compare.ts';
import { whatIf } from './audit/what-if.ts';
import type { Day } from './day.ts';
import { allFacts } from './facts/index.ts';
import { rememberViews } from './facts/views.ts';
import type { Workings } from './facts/workings.ts';
import {
  type Appended,
  appendEntries,
  type Belief,
  type Book,
  checkLedger,
  foldTo,
  type Ledger,
  layOver,
  limitIds,
  type Measure,
  type NewEntry,
  printOf,
  readLedgerFile,
  readLedgerText,
  rememberFolds,
  rememberLatest,
  settle,
  type Tried,
  tryAppend,
} from './ledger/index.ts';
import type { Problem } from './problem.ts';
import { cellNamesOf } from './rulebook/cells.ts';
import type { Known } from './rulebook/checks/index.ts';
import type { RuleFile } from './rulebook/document.ts';
import { inForce, rememberSorted } from './rulebook/figures.ts';
import type { Answer, Entry, Moment, Request, Rulebook, State, Supposition, Value, WhatIf } from './types.ts';
import { toBase } from './units.ts';

export { adviceFileOf } from './audit/advice-file.ts';
export type { Audit, Since } from './audit/audit.ts';
export type { Appended, NewEntry, Tried } from './ledger/index.ts';
export { freeName, kindNamed, kinds, mayWrite, printOf } from './ledger/index.ts';

/** Figures that the fetching of forecasts goes by. */
const fetchingIds = [
  'weather/forecast-fetch-after',
  'weather/forecast-days',
  'weather/night-begins',
  'weather/night-ends',
];

/** What a rulebook is checked against. */
export const known: Known = { facts: [...allFacts.values()], figures: [...limitIds, ...fetchingIds] };

/** A figure that is one number, in force on a day, in base units. Throws when the book has no such figure. */
export const figureOn = (book: Rulebook, id: string, on: Day): number => {
  const figure = book.figures[id];
  const value = figure === undefined ? undefined : inForce(figure, on).value;
  if (figure === undefined || typeof value !== 'number') throw new Error(`figure ${id} is no lone number`);
  return toBase(book.units, { value, unit: figure.unit });
};

/** A published book with rule files of the keeper's laid over it; their paths begin below the folder they are in. */
export const withOwnRules = (book: Rulebook, files: readonly RuleFile[]): Promise<OwnBook> =>
  layOwnRules(book, files, known);

/** A ledger opened over a rulebook. Nothing is stored but the file; what was worked out last is kept while it is open. */
export interface Engine {
  readonly book: Rulebook;
  readonly file: string;
  /** Raw lines of the file, line 1 first. */
  readonly lines: readonly string[];
  /** What the entries add up to at a moment. */
  state(moment: Moment): State;
  ask(request: Request): Promise<Answer>;
  /** The same without its suppositions and with them. */
  askWhatIf(request: Request, supposing: readonly Supposition[]): Promise<WhatIf>;
  /** One fact on a day, in base units; null when unknown. */
  fact(id: string, group: string | null, moment: Moment): Value | null;
  /** The entries that count, undone ones left out, in file order. */
  standing(): readonly Entry[];
  /** Every entry that could be read, in file order, also undos, corrections and what they are about. */
  believed(): readonly Entry[];
  /**
   * What was advised, what has changed since and why.
   * @param rulesFolder where rulebooks that gave advice are kept; null for nowhere
   */
  audit(rulesFolder: string | null): Audit;
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
  figures: Object.fromEntries(
    Object.values(book.figures).map((figure) => [
      figure.id,
      { unit: figure.unit, cells: () => cellNamesOf(figure) },
    ]),
  ),
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

/** Every fact that may have a part in the answers of a question. */
export const factsBehind = (book: Rulebook, question: string): ReadonlySet<string> =>
  factsBelow(book, allFacts, question);

const openLedger = (book: Rulebook, ledger: Ledger, text: () => string): Engine => {
  const reading = bookFor(book);
  const sortKeys = rememberSorted();
  const see = rememberViews();
  const foldAt = rememberFolds(ledger, reading);
  const latestWorkings = rememberLatest<Workings>();
  const worldAt = (
    moment: Moment,
    of: Rulebook = book,
    supposing: readonly Supposition[] = [],
    memory?: World['memory'],
  ): World => {
    const entries = supposing.flatMap(({ what }) => ('entry' in what ? [what.entry] : []));
    const over = layOver(ledger, moment, entries, reading);
    const isAsFiled = over.ledger === ledger;
    const { state, problems } = isAsFiled ? foldAt(moment) : foldTo(over.ledger, over.moment, reading);
    return { book: of, facts: allFacts, state, problems, sortKeys, see, memory };
  };
  /** Looks that share what they work out; made for one answer, or for answers that are set beside each other. */
  const lookAround = (): Look => {
    const memory = rememberWorkings();
    return ({ moment, book: of }, asked, depth) => {
      const request = lookBack(of, { ...asked, moment });
      const seen = { ...request.moment, on: request.asked ?? request.moment.on };
      return answer(worldAt(seen, of, request.supposing, memory), request, depth);
    };
  };
  return {
    book,
    file: ledger.file,
    lines: ledger.lines,
    state: (moment) => foldAt(moment).state,
    ask: (asked) => lookAround()({ moment: asked.moment, book }, asked, 'all'),
    askWhatIf: async (asked, supposing) => {
      const look = lookAround();
      const here = { moment: asked.moment, book };
      const before = await look(here, asked, 'now');
      return whatIf(
        before,
        await look(here, { ...asked, supposing: [...supposing, ...asked.supposing] }, 'all'),
      );
    },
    fact: (id, group, moment) =>
      latestWorkings(JSON.stringify(moment), () => workingsOn(worldAt(moment), moment.on, null, [])).step(
        id,
        group,
      ).value,
    standing: () => settle(ledger, { asOf: null, lines: null }, reading).standing.map(({ entry }) => entry),
    believed: () => settle(ledger, { asOf: null, lines: null }, reading).believed,
    audit: (rulesFolder) =>
      openAudit(
        {
          book,
          file: ledger.file,
          lines: ledger.lines.length,
          look: lookAround(),
          believed: (moment) => settle(ledger, moment, reading).believed,
          printOf: (lines) => printOf(ledger.lines.slice(0, lines).join('\n')),
        },
        rulesFolder,
      ),
    check: (today, belief = { asOf: null, lines: null }) => {
      const moment = { on: today, ...belief };
      const { problems } = foldAt(moment);
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
