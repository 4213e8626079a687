/** Folds remembered: the same as folded anew, and no more of them kept than are wanted. */
import { expect, test } from 'vitest';
import { foldTo, readLedgerText, rememberFolds, rememberLatest } from '../../../engine/ledger/index.ts';
import type { Moment } from '../../../engine/types.ts';
import { readRules } from '../../helpers/read-rules.ts';

const { units } = readRules();
const book = { units, settings: {}, figures: {} };
const ledger = readLedgerText(
  'flock.jsonl',
  [
    '{"kind":"arrive","on":"2026-05-02","group":"whites","bird":"fast","count":40,"hatched":"2026-05-01","written":"2026-05-02T07:00:00Z"}',
    '{"kind":"loss","on":"2026-05-04","group":"whites","count":2,"written":"2026-05-06T07:00:00Z"}',
    '{"kind":"loss","on":"2026-05-05","group":"whites","count":1,"written":"2026-05-06T08:00:00Z"}',
    '',
  ].join('\n'),
  book,
);

test('each moment has its own fold, and asked again the very same one', () => {
  const moments: readonly Moment[] = [
    { on: '2026-05-04', asOf: null, lines: null },
    { on: '2026-05-06', asOf: null, lines: null },
    { on: '2026-05-06', asOf: '2026-05-05', lines: null },
    { on: '2026-05-06', asOf: null, lines: 2 },
    { on: '2026-05-06', asOf: null, lines: null, without: [2] },
  ];
  const foldAt = rememberFolds(ledger, book);
  const lost = moments.map((moment) => {
    const folded = foldAt(moment);
    expect(folded).toEqual(foldTo(ledger, moment, book));
    expect(foldAt({ ...moment })).toBe(folded);
    return folded.state.groups[0]?.losses.map(({ count }) => count);
  });
  expect(lost).toEqual([[2], [2, 1], [], [2], [1]]);
});

test('only the latest eight are kept, and one that is wanted again stays', () => {
  const made: string[] = [];
  const latest = rememberLatest<string>();
  const want = (key: string): string =>
    latest(key, () => {
      made.push(key);
      return key;
    });
  for (const key of ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'a', 'i', 'a', 'b']) want(key);
  expect(made).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'b']);
});
