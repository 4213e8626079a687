/** Lines that put an amount right, and lines that only look like it. */
import { expect, test } from 'vitest';
import { finderFor } from '../../../cli/understand/finder.ts';
import { findPutRight } from '../../../cli/understand/put-right.ts';
import { listener } from '../../helpers/heard.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const { about } = listener();
const find = finderFor(about, lexiconFor(about.book));

test.each([
  ['no, 3 not 2', { now: 3, was: 2 }],
  ['sorry, the low was 41, not 51', { now: 41, was: 51 }],
  ['no, not 4 but 5 bags', { now: 5, was: 4 }],
  ['nah it was three', { now: 3, was: null }],
  ['lost 3 whites', null],
  ['should it be 3 lamps, not 2?', null],
  ['no, 3 in the pen', null],
])('%s', (words, right) => {
  expect(findPutRight(find(words))).toEqual(right);
});
