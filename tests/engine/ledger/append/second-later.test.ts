import { expect, test } from 'vitest';
import { aSecondLater } from '../../../../engine/ledger/append/second-later.ts';

test.each([
  ['2026-05-14T09:30:00+02:00', '2026-05-14T09:30:01+02:00'],
  ['2026-05-14T23:59:59-05:00', '2026-05-15T00:00:00-05:00'],
  ['2028-02-28T23:59:59Z', '2028-02-29T00:00:00Z'],
  ['2026-05-14', null],
  ['2026-13-40T00:00:00Z', null],
])('a second after %s is %s', (written, later) => {
  expect(aSecondLater(written)).toBe(later);
});
