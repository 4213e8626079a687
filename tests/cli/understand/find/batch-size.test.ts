import { expect, test } from 'vitest';
import { findBatchSize } from '../../../../cli/understand/find/batch-size.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';

test.each([
  ['plan two batches of 20 birds', 20],
  ['plan one batch of whites and one batch of reds, 20 each', 20],
  ['plan two batches, 18 birds each', 18],
  ['plan a batch of 20 birds', null],
  ['4 lb each', null],
])('%s: %s', (words, size) => {
  expect(findBatchSize(tokenise(words))).toBe(size);
});
