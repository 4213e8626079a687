/** What came between two moments, and the later one with some of it taken away. */
import { describe, expect, test } from 'vitest';
import { candidatesBetween } from '../../../engine/audit/candidates.ts';
import { undoCauses } from '../../../engine/audit/undo.ts';
import { settle } from '../../../engine/ledger/index.ts';
import { inForce } from '../../../engine/rulebook/figures.ts';
import type { Moment, Rulebook } from '../../../engine/types.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { correctionOf, ledgerOf, book as reading, stateOf, undoOf, whites } from '../../helpers/ledger-of.ts';

const at = (on: string, lines: number | null = null): Moment => ({ on, asOf: null, lines });

const loss = { kind: 'loss', on: '2026-05-10', group: 'whites', count: 2, cause: 'hawk' };
const rain = { kind: 'weather', on: '2026-05-12', rain: '12 mm', written: '2026-05-10T07:00:00+00:00' };
const bag = { kind: 'figure', on: '2026-05-10', figure: 'feed/bag', value: '40 lb', reason: 'smaller bags' };
const ledger = ledgerOf(whites, loss, correctionOf(2, loss, { count: 3 }), rain, bag, undoOf(5, bag));

const held = 'pasture/hardening-days';

/** The shipped rulebook with a value of it that comes into force on a day. */
const bookWith = (from: string, value: number): Rulebook => {
  const figure = shipped.figures[held];
  const [first] = figure?.values ?? [];
  if (figure === undefined || first === undefined) throw new Error(`no ${held}`);
  const values = [...figure.values, { ...first, from, value }];
  return { ...shipped, figures: { ...shipped.figures, [held]: { ...figure, values } } };
};

test('causes are entries, the latest first, then figures, rules and days', () => {
  const { believed } = settle(ledger, { asOf: null, lines: null }, reading);
  const book = bookWith('2026-05-10', 7);
  const found = candidatesBetween({
    earlier: { moment: at('2026-05-09', 1) },
    later: { moment: at('2026-05-11') },
    rules: 'aaaaaaaa',
    book,
    entries: believed.slice(1),
  });
  expect(
    found.map((cause) => (cause.kind === 'entry' ? [cause.line, cause.how, cause.of] : Object.values(cause))),
  ).toEqual([
    [6, 'undone', 5],
    [5, 'own-figure', null],
    [4, 'forecast', null],
    [3, 'corrected', 2],
    [2, 'told', null],
    ['figure', held, '2026-05-10'],
    ['rules', 'aaaaaaaa', shipped.hash],
    ['days', '2026-05-09', '2026-05-11'],
  ]);
});

test('between a moment and itself there is nothing', () => {
  const seen = { moment: at('2026-05-11') };
  const same = { earlier: seen, later: seen, rules: shipped.hash, book: shipped, entries: [] };
  expect(candidatesBetween(same)).toEqual([]);
});

test('a day to come that is looked at again a day later is seen from nearer by: that is a day gone by', () => {
  const saturday = at('2026-05-16');
  const nothing = { rules: shipped.hash, book: shipped, entries: [] };
  const passed = (from: string | undefined, to: string | undefined) =>
    candidatesBetween({
      earlier: { moment: saturday, asked: from },
      later: { moment: saturday, asked: to },
      ...nothing,
    });
  expect(passed('2026-05-13', '2026-05-14')).toEqual([
    { kind: 'days', from: '2026-05-13', to: '2026-05-14' },
  ]);
  expect(passed('2026-05-14', undefined)).toEqual([{ kind: 'days', from: '2026-05-14', to: '2026-05-16' }]);
  expect(passed('2026-05-14', '2026-05-14')).toEqual([]);
  const [now, then] = ['2026-05-14', '2026-05-13'].map((asked) => ({
    moment: saturday,
    asked,
    book: shipped,
  }));
  if (now === undefined || then === undefined) throw new Error('two views');
  expect(undoCauses(now, then, passed('2026-05-13', '2026-05-14')).asked).toBe('2026-05-13');
  expect(undoCauses(now, then, []).asked).toBe('2026-05-14');
});

test('undoing leaves lines out, and sets figures, rules and the day back', () => {
  const book = bookWith('2026-05-10', 7);
  const now = { moment: at('2026-05-11'), book };
  const then = { moment: at('2026-05-09', 1), book: { ...shipped, hash: 'aaaaaaaa' } };
  const undone = (...kinds: readonly string[]) => {
    const all = [
      { kind: 'entry', line: 2, entry: 'loss', on: '2026-05-10', how: 'told', of: null },
      { kind: 'figure', figure: held, from: '2026-05-10' },
      { kind: 'rules', from: 'aaaaaaaa', to: shipped.hash },
      { kind: 'days', from: '2026-05-09', to: '2026-05-11' },
    ] as const;
    const view = undoCauses(
      now,
      then,
      all.filter(({ kind }) => kinds.includes(kind)),
    );
    const figure = view.book.figures[held];
    return [view.moment, view.book.hash, figure === undefined ? null : inForce(figure, '2026-05-11').value];
  };
  const moment = { ...at('2026-05-11'), without: [] };
  expect([undone(), undone('entry'), undone('figure'), undone('rules'), undone('days')]).toEqual([
    [moment, shipped.hash, 7],
    [{ ...moment, without: [2] }, shipped.hash, 7],
    [moment, shipped.hash, 5],
    [moment, 'aaaaaaaa', 5],
    [{ ...moment, on: '2026-05-09' }, shipped.hash, 7],
  ]);
});

describe('a line that is left out', () => {
  const lossesWithout = (...without: number[]) => {
    const { standing } = settle(ledger, { asOf: null, lines: null, without }, reading);
    return standing.map(({ entry }) => [entry.line, entry.fields.count ?? null]);
  };

  test('is as one that was taken back, and so is a line that puts another right or takes it back', () => {
    expect([lossesWithout(), lossesWithout(2), lossesWithout(3), lossesWithout(6)]).toEqual([
      [
        [1, 52],
        [2, 3],
        [4, null],
      ],
      [
        [1, 52],
        [4, null],
      ],
      [
        [1, 52],
        [2, 2],
        [4, null],
      ],
      [
        [1, 52],
        [2, 3],
        [4, null],
        [5, null],
      ],
    ]);
  });

  test('changes nothing of the ledger itself', () => {
    const before = JSON.stringify(ledger);
    lossesWithout(2, 3);
    expect([JSON.stringify(ledger) === before, stateOf(ledger).lines]).toEqual([true, 6]);
  });
});
