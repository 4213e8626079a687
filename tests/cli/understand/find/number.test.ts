import { expect, test } from 'vitest';
import { findNumbers } from '../../../../cli/understand/find/number.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';

const numbersIn = (words: string): readonly number[] =>
  findNumbers(tokenise(words)).map((span) => span.value);

test.each([
  ['25', [25]],
  ['1,250 grams', [1250]],
  ['3.1 3.4 2.9', [3.1, 3.4, 2.9]],
  ['forty-two birds', [42]],
  ['forty two birds', [42]],
  ['a hundred and ten', [110]],
  ['two dozen', [24]],
  ['half a dozen', [6]],
  ['a dozen', [12]],
  ['half a bag', [0.5]],
  ['three quarters of a bag', [0.75]],
  ['one and a half bags', [1.5]],
  ['4 and a half lbs', [4.5]],
  ['2 1/2 bags', [2.5]],
  ['a couple of whites', [2]],
  ['1,6 kilo', [1.6]],
  ['a pair of reds', [2]],
  ['a brace', [2]],
  ['two score', [40]],
  ['a score and a half', [30]],
  ['2 dz', [24]],
  ['half of a dozen', [6]],
  ['half a hundred', [50]],
  ['4 and three quarter', [4.75]],
  ['one and a half a week', [1.5]],
  ['minus 3', [-3]],
  ['-3.5', [-3.5]],
  ['50lb', [50]],
])('%s', (words, expected) => {
  expect(numbersIn(words)).toEqual(expected);
});

test.each(['2-3', 'five or six', 'a few', 'the third', 'no numbers here'])('%s is no number', (words) => {
  expect(numbersIn(words)).toEqual([]);
});
