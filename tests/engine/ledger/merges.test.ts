/** Two copies of a state file joined into one: copies count once and are reported, order is that of writing, seams are named. */
import { describe, expect, test } from 'vitest';
import { checkLedger, foldTo, lineOf, type NewEntry, printOf, settle } from '../../../engine/ledger/index.ts';
import type { Problem } from '../../../engine/problem.ts';
import {
  book,
  correctionOf,
  type Line,
  ledgerOf,
  measure,
  stateOf,
  undoOf,
  whites,
} from '../../helpers/ledger-of.ts';

const all = { on: '2026-11-25', asOf: null, lines: null };
const at = (hour: string): string => `2026-05-02T${hour}:00-04:00`;
const fed = (amount: string, written?: string): NewEntry => ({
  kind: 'feed',
  on: '2026-05-02',
  amount,
  ...(written === undefined ? {} : { written }),
});
const lost = (count: number, written: string): NewEntry => ({
  kind: 'loss',
  on: '2026-05-02',
  group: 'whites',
  count,
  written,
});
const came: NewEntry = { ...whites, written: '2026-04-09T08:00:00-04:00' };

const said = ({ code, at: { line, column }, data }: Problem) => ({ code, line, column, data });
const problemsOf = (...lines: readonly Line[]) => {
  const ledger = ledgerOf(...lines);
  return [...foldTo(ledger, all, book).problems, ...checkLedger(ledger, all, book, measure())].map(said);
};
const lossesOf = (...lines: readonly Line[]) =>
  stateOf(ledgerOf(...lines)).groups[0]?.losses.map(({ count }) => count);
const copyAt = (line: number, first: number) => ({
  code: 'repeated-line',
  line,
  column: 1,
  data: { 'first-line': first, counted: 'once' },
});

test('a whole file joined with itself adds up to itself, and every copy is reported with the line it repeats', () => {
  const lines = [came, lost(1, at('07:00')), lost(2, at('08:00'))];
  expect(lossesOf(...lines, ...lines)).toEqual([1, 2]);
  expect(problemsOf(...lines, ...lines)).toEqual([copyAt(4, 1), copyAt(5, 2), copyAt(6, 3)]);
});

test('without a writing time, or with another, the same happened twice', () => {
  const feedings = (...lines: readonly Line[]) => stateOf(ledgerOf(...lines)).feedings.length;
  expect([
    feedings(fed('25 lb'), fed('25 lb')),
    feedings(fed('25 lb', at('07:00')), fed('25 lb', at('08:00'))),
    feedings(fed('25 lb', at('07:00')), fed('25 lb', at('07:00'))),
  ]).toEqual([2, 2, 1]);
});

test('taking back the first takes back the record; taking back the copy leaves it', () => {
  const loss = lost(1, at('07:00'));
  expect(lossesOf(came, loss, undoOf(2, loss), loss)).toEqual([]);
  expect(lossesOf(came, loss, loss, undoOf(3, loss))).toEqual([1]);
  expect(problemsOf(came, loss, loss, undoOf(3, loss))).toEqual([]);
});

test('putting the first or the copy right puts the record right, once', () => {
  const loss = lost(1, at('07:00'));
  expect(lossesOf(came, loss, loss, correctionOf(2, loss, { count: 3 }))).toEqual([3]);
  expect(lossesOf(came, loss, loss, correctionOf(3, loss, { count: 3 }))).toEqual([3]);
});

test('one day of two keepers adds up to the same whichever copy came first, and is said once', () => {
  const [one, two, three] = [lost(1, at('07:00')), lost(2, at('08:00')), lost(3, at('09:00'))];
  expect([lossesOf(came, one, three, two), lossesOf(came, two, one, three)]).toEqual([
    [1, 2, 3],
    [1, 2, 3],
  ]);
  expect(problemsOf(came, three, one, two)).toEqual([
    {
      code: 'written-order',
      line: 3,
      column: lineOf(one).indexOf(`"${at('07:00')}"`) + 1,
      data: { field: 'written', found: at('07:00'), min: at('09:00'), 'first-line': 2 },
    },
  ]);
});

test('an hour that a keeper typed without a writing time stays behind the line above it', () => {
  const { written: _, ...unstamped } = lost(9, '');
  expect(lossesOf(came, lost(2, at('08:00')), unstamped, lost(1, at('07:00')))).toEqual([1, 2, 9]);
});

test.each([
  ['a whole line', lineOf(lost(1, at('07:00')))],
  ['half a line', lineOf(lost(1, at('07:00'))).slice(0, 40)],
  ['half a line within a text', '{"kind":"note","on":"2026-05-02","words":"rain and'],
])('%s run together with the next is named where the next begins', (_, cut) => {
  expect(problemsOf(came, `${cut}${lineOf(lost(2, at('08:00')))}`)).toEqual([
    { code: 'not-json', line: 2, column: cut.length + 1, data: { seam: cut.length + 1 } },
  ]);
});

/** Two copies that grew apart, joined as a version control does that keeps the lines of both: first what one added, then the other. */
const joined = (both: readonly Line[], one: readonly Line[], other: readonly Line[]): readonly Line[] => [
  ...both,
  ...one,
  ...other,
];

describe('an undo or a correction whose line was moved by joining', () => {
  const [nells, sams] = [lost(4, at('07:00')), lost(2, at('08:00'))];
  const stamped = (entry: NewEntry, hour: string): NewEntry => ({ ...entry, written: at(hour) });
  const taken = stamped(undoOf(2, sams), '08:05');
  const righted = stamped(correctionOf(2, sams, { count: 3 }), '08:05');

  test.each([
    ['an undo', taken, [4]],
    ['a correction', righted, [4, 3]],
  ])('%s finds it by its fingerprint, whichever copy came first', (_, revision, losses) => {
    const [first, last] = [
      joined([came], [nells], [sams, revision]),
      joined([came], [sams, revision], [nells]),
    ];
    expect([lossesOf(...first), lossesOf(...last)]).toEqual([losses, losses]);
    expect(problemsOf(...first)).toEqual([]);
  });

  test('an undo of an undo finds that', () => {
    const again = stamped(undoOf(3, taken), '08:10');
    expect(lossesOf(...joined([came], [nells], [sams, taken, again]))).toEqual([4, 2]);
  });

  test('what it says of the moved line is where that stands now', () => {
    const { believed } = settle(ledgerOf(...joined([came], [nells], [sams, taken])), all, book);
    expect(believed.at(-1)?.fields.line).toBe(3);
  });

  test('of lines that stand there as copies, the one that counts is meant', () => {
    expect(lossesOf(...joined([came, nells], [sams], [sams, taken]))).toEqual([4]);
  });

  test('of lines without a writing time none is guessed, and check says so', () => {
    const byHand = '{"kind":"loss","on":"2026-05-02","group":"whites","count":2}';
    const unclear = joined([came], [nells, byHand], [byHand, undoOf(2, byHand)]);
    expect(lossesOf(...unclear)).toEqual([4, 2, 2]);
    const print = printOf(byHand);
    expect(problemsOf(...unclear).filter(({ code }) => code === 'undo-target')).toEqual([
      {
        code: 'undo-target',
        line: 5,
        column: lineOf(undoOf(2, byHand)).indexOf(`"${print}"`) + 1,
        data: { field: 'print', cause: 'several', found: print },
      },
    ]);
  });

  test('a line further down is never meant', () => {
    expect(lossesOf(came, taken, sams)).toEqual([2]);
    expect(problemsOf(came, taken, sams).map(({ code, data }) => [code, data.cause])).toContainEqual([
      'undo-target',
      'later',
    ]);
  });

  test('of two corrections the one written later counts, whichever copy came first', () => {
    const [early, late] = [
      stamped(correctionOf(2, sams, { count: 3 }), '09:00'),
      stamped(correctionOf(2, sams, { count: 5 }), '10:00'),
    ];
    expect([
      lossesOf(...joined([came, sams], [early], [late])),
      lossesOf(...joined([came, sams], [late], [early])),
    ]).toEqual([[5], [5]]);
  });
});
