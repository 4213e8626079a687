/** Records in the order in which they were told. */
import { expect, test } from 'vitest';
import { inOrderTold, lastTold } from '../../../cli/talk/in-order-told.ts';
import type { Entry } from '../../../engine/types.ts';

const entry = (line: number, written?: string): Entry => {
  const record = { kind: 'note', on: '2026-05-05', ...(written === undefined ? {} : { written }) };
  return {
    kind: 'note',
    on: '2026-05-05',
    line,
    raw: JSON.stringify(record),
    fields: {},
    written: written ?? null,
    by: null,
  };
};
const lines = (entries: readonly Entry[]): readonly number[] => inOrderTold(entries).map(({ line }) => line);

test('is by writing time, whatever offset it was written in, and by line where that is the same', () => {
  expect(
    lines([
      entry(1, '2026-05-05T09:00:00-04:00'),
      entry(2, '2026-05-05T12:00:00+00:00'),
      entry(3, '2026-05-05T14:00:00+01:00'),
      entry(4, '2026-05-05T12:00:00+00:00'),
    ]),
  ).toEqual([2, 4, 1, 3]);
});

test('keeps a line without a time, or with one that is none, behind the line above it', () => {
  expect(
    lines([
      entry(1),
      entry(2, '2026-05-05T12:00:00+00:00'),
      entry(3),
      entry(4, 'noon'),
      entry(5, '2026-05-05T08:00:00+00:00'),
      entry(6),
    ]),
  ).toEqual([1, 5, 6, 2, 3, 4]);
});

test('the last one told is one of this conversation, whatever another clock says; else the last of all that was said', () => {
  const mine = entry(1, '2026-05-05T09:00:00+00:00');
  const theirs = entry(2, '2026-05-05T23:00:00+00:00');
  const fetched = {
    ...entry(3, '2026-05-05T23:30:00+00:00'),
    fields: { fetched: '2026-05-05T23:30:00+00:00' },
  };
  const all = [mine, theirs, fetched];
  expect(lastTold(all, [mine.raw, 'a line taken back since'])).toBe(mine);
  expect(lastTold(all, [])).toBe(theirs);
  expect(lastTold([fetched], [])).toBeUndefined();
});
