/** Rows for spreadsheets: the grammar of RFC 4180 (section 2), and cells that no spreadsheet works out. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clean } from '../../../cli/say/clean.ts';
import { sayCsv } from '../../../cli/say/csv.ts';
import '../../helpers/same-draws.ts';

/** Reads a text by the grammar of RFC 4180, letter by letter; throws on what the grammar does not allow. */
const readCsv = (text: string): string[][] => {
  const rows: string[][] = [];
  let row: string[] = [];
  let rest = text;
  while (rest !== '') {
    const quoted = /^"((?:[^"]|"")*)"/.exec(rest);
    const cell = quoted ?? /^([^",\r\n]*)/.exec(rest);
    if (cell === null) throw new Error(`no cell at ${rest.slice(0, 20)}`);
    row.push((cell[1] ?? '').replaceAll('""', '"'));
    rest = rest.slice(cell[0].length);
    if (rest.startsWith(',')) rest = rest.slice(1);
    else if (rest.startsWith('\r\n')) {
      rows.push(row);
      row = [];
      rest = rest.slice(2);
    } else throw new Error(`neither comma nor end of row at ${rest.slice(0, 20)}`);
  }
  return rows;
};

const written = (rows: readonly string[]): string => rows.map((row) => `${row}\n`).join('');
const cellsOf = (text: string | null): string | undefined =>
  readCsv(written(sayCsv(['a', 'b'], [{ a: text, b: 1 }])))[1]?.[0];

test('commas, quotes and blanks at the ends are put in quotes; numbers, yes and no, and nothing are bare', () => {
  expect(
    sayCsv(
      ['words', 'count', 'done', 'who'],
      [
        { words: 'rain, then "sun"', count: -1.5, done: true, who: null },
        { words: ' wet', count: 0, done: false },
      ],
    ),
  ).toEqual(['words,count,done,who\r', '"rain, then ""sun""",-1.5,yes,\r', '" wet",0,no,\r']);
});

test.each([
  '=1+1',
  '+1',
  '-1',
  '@SUM(A1)',
  '  =1',
  '\t=1',
  '\r=1',
  '\n=1',
  '＝1',
  '\u202e=1',
  '\u001b[31m=1',
])('%j is text and no formula', (text) => {
  expect(cellsOf(text)).toMatch(/^'\s*[=+\-@＝]/);
});

test.each(['1 - 2', 'a=b', 'nell@home', '’-1'])('%j stays as it is', (text) => {
  expect(cellsOf(text)).toBe(text);
});

describe('any text', () => {
  test('is read back in its own cell, as it is shown on a terminal', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'grapheme' }), { maxLength: 5 }), (texts) => {
        const rows = readCsv(
          written(
            sayCsv(
              ['a', 'b'],
              texts.map((a) => ({ a, b: 7 })),
            ),
          ),
        );
        expect(rows.map((row) => [row.length, row[1]])).toEqual([[2, 'b'], ...texts.map(() => [2, '7'])]);
        const shown = rows
          .slice(1)
          .map(([cell = ''], at) => (cell === `'${clean(texts[at] ?? '')}` ? cell.slice(1) : cell));
        expect(shown).toEqual(texts.map(clean));
      }),
    );
  });

  test('never begins a formula', () => {
    fc.assert(
      fc.property(fc.constantFrom('=', '+', '-', '@'), fc.string(), (sign, text) => {
        expect(cellsOf(`${sign}${text}`)?.startsWith(`'${sign}`)).toBe(true);
      }),
    );
  });
});
