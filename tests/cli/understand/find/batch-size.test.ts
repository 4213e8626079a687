import { expect, test } from 'vitest';
import { findBatchSize } from '../../../../cli/understand/find/batch-size.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';

test.each([
  ['plan two batches of 20 birds', 20],
  ['three lots of two dozen', 24],
  ['plan two batches', null],
  ['a batch of reds', null],
  ['two batches of whites', null],
])('%s: %s each', (words, size) => {
  expect(findBatchSize(tokenise(words))).toBe(size);
});
