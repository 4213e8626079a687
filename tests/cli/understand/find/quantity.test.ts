/** Amounts with their units, as they are said: with parts behind, in two units, of a sized bag, as odds. */
import { expect, test } from 'vitest';
import { findNumbers } from '../../../../cli/understand/find/number.ts';
import { findQuantities, unitWords } from '../../../../cli/understand/find/quantity.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';
import { shipped } from '../../../helpers/flock-of.ts';

const words = unitWords(shipped.units);
const amounts = (line: string): readonly string[] => {
  const tokens = tokenise(line);
  return findQuantities(tokens, findNumbers(tokens), words, 'us').map(
    ({ value, unit }) => `${value} ${unit}`,
  );
};

test.each([
  ['4 lb 6', ['4.375 lb']],
  ['three pound fourteen average', ['3.875 lb']],
  ['1 kilo 820', ['1.82 kg']],
  ['5 lb and 2 oz', ['5.125 lb']],
  ['a stone and a half is 1 stone and a half', ['1.5 stone', '1.5 stone']],
  ['an inch and a quarter in the gauge', ['1.25 in']],
  ['a metre and a half', ['1.5 m']],
  ['2000 m2 of ground', ['2000 m2']],
  ['two pounds and a quarter', ['2.25 lb']],
  ['one full bag', ['1 bag']],
  ['a twenty-kilo bag', ['20 kg']],
  ['half a ton', ['0.5 ton']],
  ['one in ten', ['10 percent']],
  ['99 in a hundred', ['99 percent']],
  ['4 lb 6 weeks ago', ['4 lb', '6 week']],
  ['42 day-olds', []],
  ['2 in 10 days', ['10 day']],
])('%s', (line, wanted) => {
  expect(amounts(line)).toEqual(wanted);
});
