import { expect, test } from 'vitest';
import { findMonth } from '../../../../cli/understand/find/month.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';

test.each([
  ['why not april', 'april'],
  ['could I start in may', 'may'],
  ['may I start now', null],
  ['march them to the pen', null],
  ['anything in december', 'december'],
])('%s names %s', (words, month) => {
  expect(findMonth(tokenise(words))).toBe(month);
});
