/** When two rules of a question need an order, and when they need none. */
import { describe, expect, test } from 'vitest';
import { smallRulebook } from '../../../helpers/small-rulebook.ts';

const compare = (fact: string, operator: string, side: string): string =>
  `{fact: ${fact}, operator: ${operator}, ${side}, because: x}`;
const old = compare('age', 'at-least', 'figure: out/youngest');
const young = compare('age', 'less-than', 'figure: out/youngest');
const cold = compare('night-low', 'less-than', 'other: night-floor');
const inside = compare('place', 'is', 'value: brooder');
const outside = compare('place', 'one-of', 'value: [pen, gone]');

const rule = (when: string, more: { readonly gives?: string; readonly outranks?: string } = {}): string => `
gives: ${more.gives ?? 'no'}
when: ${when}
says: x
why-right: x
source: own-judgement
outranks: [${more.outranks ?? ''}]
cases:
  - {name: a, facts: {}, expect: held}
  - {name: b, facts: {}, expect: failed}
  - {name: c, facts: {}, expect: unknown}
`;

/** Pairs of rules that are told to tie, over these rules alone. */
const tiesOf = (rules: Readonly<Record<string, string>>): readonly string[] => {
  const over = Object.entries(rules).map(([name, text]) => [`decisions/go-out/${name}.yaml`, text] as const);
  const { problems } = smallRulebook({
    'decisions/go-out/may-go.yaml': null,
    'decisions/go-out/too-young.yaml': null,
    'figures/out/youngest.yaml':
      'description: x\nunit: day\nvalues: [{from: 2026-01-01, source: own-judgement, value: 14}]\n',
    'decisions/go-out/keeps-the-figure-in-use.yaml': rule(`{all: [${old}]}`, { gives: 'remark' }),
    ...Object.fromEntries(over),
  });
  return problems.map(({ code, data }) =>
    code === 'tie-without-rank'
      ? [data.rule, data.other]
          .map((id) => String(id).replace('go-out/', ''))
          .sort()
          .join(' ')
      : code,
  );
};

describe('two rules need an order', () => {
  test('when nothing keeps both from holding, whatever they give', () => {
    expect(tiesOf({ a: rule(`{all: [${old}]}`), b: rule(`{all: [${cold}]}`, { gives: 'yes' }) })).toEqual([
      'a b',
    ]);
    expect(tiesOf({ a: rule(`{all: [${old}]}`), b: rule(`{all: [${cold}]}`) })).toEqual(['a b']);
  });

  test('when what keeps them apart is only one way of several, or is turned round', () => {
    expect(tiesOf({ a: rule(`{any: [${old}, ${cold}]}`), b: rule(`{all: [${young}]}`) })).toEqual(['a b']);
    expect(tiesOf({ a: rule(`{not: ${old}}`), b: rule(`{all: [${young}]}`) })).toEqual(['a b']);
    expect(
      tiesOf({
        a: rule(`{all: [${inside}]}`),
        b: rule(`{all: [${compare('place', 'one-of', 'value: [brooder, pen]')}]}`),
      }),
    ).toEqual(['a b']);
  });
});

describe('two rules need no order', () => {
  test('when one outranks the other, by itself or by way of a third', () => {
    const three = (first: string, second: string) =>
      tiesOf({
        a: rule(`{all: [${old}]}`, { outranks: first }),
        b: rule(`{all: [${cold}]}`, { outranks: second }),
        c: rule(`{all: [${inside}]}`),
      });
    expect(three('b', 'c')).toEqual([]);
    expect(three('b', '')).toEqual(['a c', 'b c']);
  });

  test('when they cannot both hold', () => {
    const apart = [
      [old, young],
      [inside, outside],
      [compare('place', 'is', 'value: pen'), compare('place', 'is-not', 'value: pen')],
      [compare('place', 'one-of', 'value: [pen]'), compare('place', 'none-of', 'value: [pen]')],
      [
        compare('age', 'more-than', 'figure: out/youngest'),
        compare('age', 'at-most', 'figure: out/youngest'),
      ],
    ];
    for (const [first, second] of apart)
      expect(
        tiesOf({ a: rule(`{all: [${first}, ${cold}]}`), b: rule(`{all: [{all: [${second}]}]}`) }),
      ).toEqual([]);
  });

  test('when one of them settles nothing', () => {
    for (const gives of ['caution', 'step', 'remark'])
      expect(tiesOf({ a: rule(`{all: [${old}]}`), b: rule(`{all: [${cold}]}`, { gives }) })).toEqual([]);
  });
});
