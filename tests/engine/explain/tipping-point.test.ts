/** Where a comparison would just turn over, checked against the rule engine's own comparison. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { turningValues } from '../../../engine/explain/tipping-point.ts';
import { outcomeOf } from '../../../engine/reason/outcomes.ts';
import { runRules } from '../../../engine/reason/run.ts';
import type { Value } from '../../../engine/types.ts';
import { leaf, ruleOf } from '../../helpers/rules-of.ts';

const compare = async (operator: string, left: Value | undefined, right: Value | readonly string[]) => {
  const when = Array.isArray(right)
    ? leaf('a', operator, { value: right })
    : leaf('a', operator, { other: 'b' });
  const facts: Readonly<Record<string, Value | undefined>> = { a: left, b: right as Value };
  const [result] = await runRules([ruleOf('one', when)], {
    fact: (id) => facts[id],
    figure: () => undefined,
  });
  if (result === undefined) throw new Error('no result');
  const [first] = outcomeOf(result).leaves;
  if (first === undefined) throw new Error('no leaf');
  return first;
};

describe('a number', () => {
  const operators = ['less-than', 'at-most', 'more-than', 'at-least', 'is', 'is-not'] as const;

  test('turns at the value named', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...operators),
        fc.integer({ min: -5, max: 5 }),
        fc.integer({ min: -5, max: 5 }),
        async (operator, left, right) => {
          const now = await compare(operator, left, right);
          const [to, ...more] = turningValues(now, 1, []);
          if (to === undefined) throw new Error('no turning value');
          expect(more).toEqual([]);
          expect((await compare(operator, to, right)).outcome).not.toBe(now.outcome);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('and not a step before it', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom('less-than', 'at-most', 'more-than', 'at-least'),
        fc.integer({ min: -5, max: 5 }),
        fc.integer({ min: -5, max: 5 }),
        async (operator, left, right) => {
          const now = await compare(operator, left, right);
          const to = Number(turningValues(now, 1, [])[0]);
          const before = to + Math.sign(left - to);
          expect((await compare(operator, before, right)).outcome).toBe(now.outcome);
        },
      ),
      { numRuns: 300 },
    );
  });
});

test('a yes turns to no, a choice to any other that the rules name', async () => {
  expect(turningValues(await compare('is', true, true), 1, [])).toEqual([false]);
  expect(turningValues(await compare('is-not', false, true), 1, [])).toEqual([true]);
  const places = ['brooder', 'pen', 'gone'];
  expect(turningValues(await compare('is', 'pen', 'pen'), 1, places)).toEqual(['brooder', 'gone']);
  expect(turningValues(await compare('one-of', 'gone', ['brooder', 'pen']), 1, places)).toEqual([
    'brooder',
    'pen',
  ]);
});

test.each([
  ['a fact that is not known', 'less-than', undefined, 3],
  ['a fact only asked to be known', 'known', 3, 3],
  ['a day', 'less-than', '2026-05-01', '2026-05-10'],
] as const)('of %s nothing is said', async (_, operator, left, right) => {
  expect(turningValues(await compare(operator, left, right), 1, [])).toEqual([]);
});
