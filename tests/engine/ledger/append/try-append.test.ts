/** The dry run: what would be written, on which line, and only the problems that it would bring. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineOf, type NewEntry, readLedgerText, tryAppend } from '../../../../engine/ledger/index.ts';
import { book, measure, textOf, whites } from '../../../helpers/ledger-of.ts';

const tryOn = (text: string, ...entries: readonly NewEntry[]) =>
  tryAppend('flock.jsonl', text, entries, book, measure());
const loss: NewEntry = { kind: 'loss', on: '2026-05-02', group: 'whites', count: 2 };

describe('tryAppend', () => {
  it('gives the line as it would stand, and its number', () => {
    const told = { written: '2026-05-02T07:12:00-04:00', by: 'Ada', ...loss };
    expect(tryOn(textOf(whites), told)).toEqual({
      lines: [
        '{"kind":"loss","on":"2026-05-02","group":"whites","count":2,"by":"Ada","written":"2026-05-02T07:12:00-04:00"}',
      ],
      first: 2,
      problems: [],
    });
    expect(tryOn('', whites).first).toBe(1);
    expect(tryOn(lineOf(whites), loss)).toEqual(tryOn(textOf(whites), loss));
  });

  it('takes several entries at once, the later ones resting on the earlier', () => {
    expect(tryOn('', whites, loss).problems).toEqual([]);
    const both = tryOn(textOf(whites), { ...loss, count: 50 }, loss);
    expect(both.problems.map(({ code, at }) => [code, at.line])).toEqual([['more-than-alive', 3]]);
  });

  it('stamps the same thing told twice within a second a second later, so that neither passes for a copy', () => {
    const told = { ...loss, count: 1, written: '2026-05-02T07:12:59-04:00' };
    const { lines, problems } = tryOn(textOf(whites, told), told, told);
    expect(lines.map((line) => JSON.parse(line).written)).toEqual([
      '2026-05-02T07:13:00-04:00',
      '2026-05-02T07:13:01-04:00',
    ]);
    expect(problems).toEqual([]);
  });

  it('tells only the problems that come with the new lines', () => {
    const old = textOf(whites, '{"kind":"lost"}', { ...loss, group: 'browns' });
    expect(tryOn(old, loss).problems).toEqual([]);
    const { problems } = tryOn(old, { ...loss, group: 'greens' });
    expect(problems.map(({ code, at, data }) => [code, at.line, data.found])).toEqual([
      ['unknown-group', 4, 'greens'],
    ]);
  });

  it('does not take a line that was cut off before for a new problem', () => {
    expect(tryOn(`${textOf(whites)}{"kind":"lo`, loss)).toMatchObject({ first: 3, problems: [] });
  });

  it('and then reading gives the entry back, whatever the words in it', () => {
    const words = fc.string({ unit: 'grapheme', minLength: 1 });
    const count = fc.integer({ min: 1, max: 51 });
    fc.assert(
      fc.property(words, count, fc.boolean(), (said, lost, isCut) => {
        const before = isCut ? `${textOf(whites)}{"kind":` : textOf(whites);
        const entries = [
          { kind: 'note', on: '2026-05-02', words: said },
          { ...loss, count: lost, cause: said },
        ];
        const { lines, first, problems } = tryOn(before, ...entries);
        fc.pre(problems.length === 0);
        const text = `${before}${isCut ? '\n' : ''}${lines.join('\n')}\n`;
        const read = readLedgerText('flock.jsonl', text, book).entries.filter(({ line }) => line >= first);
        expect(read.map(({ kind, on, line, fields }) => ({ kind, on, line, ...fields }))).toEqual(
          entries.map((entry, index) => ({ ...entry, line: first + index })),
        );
      }),
    );
  });
});
