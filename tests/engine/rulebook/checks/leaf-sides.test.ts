/** Comparisons that are as they should be, beside the wrong ones among the specimens. */
import { expect, test } from 'vitest';
import { changed, smallRulebook } from '../../../helpers/small-rulebook.ts';

const codesFor = (fact: string, operator: string, side: string): readonly string[] => {
  const rule = 'decisions/go-out/too-young.yaml';
  const text = changed(
    rule,
    `    - fact: age
      operator: less-than
      figure: out/youngest
      because`,
    `    - fact: ${fact}
      operator: ${operator}
      ${side}
      because`,
  );
  const outranks = changed('decisions/go-out/may-go.yaml', 'chore: ', 'outranks: [too-young]\nchore: ');
  return smallRulebook({ ...text, ...outranks }).problems.map(({ code }) => code);
};

test.each([
  ['age', 'more-than', 'value: 0'],
  ['age', 'is', 'value: 1'],
  ['age', 'less-than', 'figure: out/youngest'],
  ['age', 'known', 'figure: out/youngest'],
  ['night-low', 'at-most', 'other: night-floor'],
  ['night-low', 'less-than', 'figure: out/lowest-night'],
  ['place', 'is-not', 'value: pen'],
  ['place', 'none-of', 'value: [pen, gone]'],
])('%s %s %s is right', (fact, operator, side) => {
  expect(codesFor(fact, operator, side)).toEqual([]);
});

test.each([
  ['age', 'more-than', 'value: 2', 'bare-number'],
  ['age', 'more-than', 'value: -1', 'bare-number'],
  ['place', 'less-than', 'value: pen', 'no-order'],
  ['place', 'is', 'value: [pen, gone]', 'wrong-sides'],
  ['place', 'one-of', 'value: pen', 'wrong-sides'],
  ['age', 'known', 'value: 1', 'wrong-sides'],
  ['age', 'known', 'other: night-low', 'wrong-sides'],
  ['age', 'is', 'other: night-low', 'unit-clash'],
  ['place', 'is', 'figure: out/youngest', 'unit-clash'],
])('%s %s %s is %s', (fact, operator, side, code) => {
  expect(codesFor(fact, operator, side)).toEqual([code]);
});
