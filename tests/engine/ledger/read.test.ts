/** Reading a state file: entries with their line and raw text, both line ends, and a cut-off end. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readLedgerFile, readLedgerText } from '../../../engine/ledger/index.ts';
import { book, ledgerOf, textOf, whites } from '../../helpers/ledger-of.ts';

const read = (text: string) => readLedgerText('flock.jsonl', text, book);
const fed =
  '{"kind":"feed","on":"2026-05-02","amount":"25 lb","written":"2026-05-02T07:12:00-04:00","by":"Ada"}';

describe('readLedgerText', () => {
  it('gives each entry its line, its raw text and its values in the units of the keeper', () => {
    expect(read(`\n${fed}\n`)).toEqual({
      file: 'flock.jsonl',
      lines: ['', fed],
      entries: [
        {
          kind: 'feed',
          on: '2026-05-02',
          written: '2026-05-02T07:12:00-04:00',
          by: 'Ada',
          line: 2,
          raw: fed,
          fields: { amount: { value: 25, unit: 'lb' } },
        },
      ],
      problems: [],
      ended: 'clean',
    });
  });

  it('takes an empty file, a mark of byte order, and line ends of either kind', () => {
    expect(read('')).toEqual({ file: 'flock.jsonl', lines: [], entries: [], problems: [], ended: 'clean' });
    const mixed = read(`\ufeff${fed}\r\n   \r\n${fed}`);
    expect(mixed.lines).toEqual([fed, '   ', fed]);
    expect(mixed.entries.map(({ line, raw }) => [line, raw])).toEqual([
      [1, fed],
      [3, fed],
    ]);
    expect(mixed.ended).toBe('clean');
  });

  it('knows a last line that was cut off, and knows it again once another line follows', () => {
    const cut = read(`${fed}\n${fed.slice(0, 30)}`);
    expect([cut.ended, cut.entries.length, cut.problems.map(({ code }) => code)]).toEqual([
      'torn',
      1,
      ['torn-line'],
    ]);
    const followed = read(`${fed}\n${fed.slice(0, 30)}\n${fed}\n`);
    expect([followed.ended, followed.entries.length]).toEqual(['clean', 2]);
    expect(followed.problems).toEqual(cut.problems);
  });

  it('finds all problems at once, in file order', () => {
    const { problems, entries } = ledgerOf(
      { kind: 'loss', on: 'monday', group: 'whites', count: 0, cuase: 'hawk' },
      whites,
      { kind: 'weigh', on: '2026-05-02', group: 'whites', weights: ['3.1', '3.2 lb', '3.3 F'] },
    );
    expect(problems.map(({ code, at }) => `${at.line}:${at.column} ${code}`)).toEqual([
      '1:21 bad-day',
      '1:55 out-of-range',
      '1:57 unknown-field',
      '3:63 bad-quantity',
      '3:78 wrong-dimension',
    ]);
    expect(entries.map(({ kind }) => kind)).toEqual(['arrive']);
  });

  it('bears ten thousand unknown fields and a very long value', () => {
    const many = Object.fromEntries(Array.from({ length: 10_000 }, (_, index) => [`f${index}`, index]));
    expect(ledgerOf({ kind: 'note', on: '2026-05-02', words: 'x', ...many }).problems).toHaveLength(10_000);
    const [problem] = ledgerOf({
      kind: 'note',
      on: '2026-05-02',
      words: Array.from({ length: 50_000 }, () => 1),
    }).problems;
    expect(String(problem?.data.found)).toHaveLength(61);
  });
});

describe('readLedgerFile', () => {
  it('reads a file, and takes one that is not there for an empty ledger', () => {
    const folder = mkdtempSync(join(tmpdir(), 'penside-'));
    const path = join(folder, 'flock.jsonl');
    expect(readLedgerFile(path, book)).toEqual({
      file: path,
      lines: [],
      entries: [],
      problems: [],
      ended: 'clean',
    });
    writeFileSync(path, textOf(whites));
    expect(readLedgerFile(path, book)).toEqual(readLedgerText(path, textOf(whites), book));
  });

  it('shows a damaged byte instead of dropping it', () => {
    const folder = mkdtempSync(join(tmpdir(), 'penside-'));
    const path = join(folder, 'flock.jsonl');
    const bytes = Buffer.from('{"kind":"note","on":"2026-05-02","words":"gate"}\n');
    bytes[42] = 0xff;
    writeFileSync(path, bytes);
    const { problems } = readLedgerFile(path, book);
    expect(problems.map(({ code, data }) => [code, data])).toEqual([
      ['control-characters', { field: 'words', found: 'U+FFFD' }],
    ]);
  });
});
