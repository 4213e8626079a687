import { expect, test } from 'vitest';
import { findNumbers } from '../../../../cli/understand/find/number.ts';
import { findTimes } from '../../../../cli/understand/find/time.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';

const timesIn = (words: string): readonly string[] => {
  const tokens = tokenise(words);
  return findTimes(tokens, findNumbers(tokens)).map((span) => span.at);
};

test.each([
  ['first kill at 07:30', ['07:30']],
  ['at 7:30 pm', ['19:30']],
  ['6am', ['06:00']],
  ['12 am', ['00:00']],
  ["8 o'clock", ['08:00']],
  ['we are starting at 8 saturday morning', ['08:00']],
  ['start at nine', ['09:00']],
  ['at 8 in the morning', ['08:00']],
  ['from 4 in the afternoon', ['16:00']],
  ['at 8 on 4 june', []],
  ['starting at 8 on 4 june', ['08:00']],
  // These are counts, weights and degrees.
  ['lost 2 saturday morning', []],
  ['lost 2 in the morning', []],
  ['it was 8 this morning', []],
  ['26:10', []],
  ['weighed 8 at 5 weeks', []],
])('%s', (words, wanted) => {
  expect(timesIn(words)).toEqual(wanted);
});
