import { expect, test } from 'vitest';
import { wholeDown, wholeUp } from '../../../../engine/facts/sums/whole.ts';

test.each([
  [0, 0, 0],
  [2.01, 3, 2],
  [3, 3, 3],
  [0.1 + 0.2 + 2.7, 3, 3],
  [3 - 1e-12, 3, 3],
  [3 + 1e-12, 3, 3],
])('%d: at least %i, at most %i', (amount, up, down) => {
  expect([wholeUp(amount), wholeDown(amount)]).toEqual([up, down]);
});
