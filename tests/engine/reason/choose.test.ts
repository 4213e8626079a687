/** From several rules to one verdict: rank decides, and nothing but rank. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byRank, choose } from '../../../engine/reason/choose.ts';
import type { RuleOutcome } from '../../../engine/reason/outcomes.ts';
import { belowOf, isVerdict } from '../../../engine/rulebook/ranking.ts';
import type { Gives, Outcome, Rule } from '../../../engine/types.ts';
import { leaf, ruleOf } from '../../helpers/rules-of.ts';

const givings: readonly Gives[] = ['yes', 'no', 'cannot-say', 'amount', 'list', 'caution', 'step', 'remark'];
const at = (outcome: Outcome, name: string, gives: Gives = 'no'): RuleOutcome => ({
  rule: ruleOf(name, leaf('age', 'known'), { gives }),
  outcome,
  deciding: [],
  leaves: [],
});

/** Rules that outrank only later ones, so that there is no circle, handed over in any order. */
const someRules = fc
  .array(fc.array(fc.nat(9), { maxLength: 3 }), { minLength: 1, maxLength: 10 })
  .map((lists) =>
    lists.map((below, index) =>
      ruleOf(`rule-${(index * 7) % 10}`, leaf('age', 'known'), {
        outranks: below
          .filter((other) => other > index && other < lists.length)
          .map((other) => `ask/rule-${(other * 7) % 10}`),
      }),
    ),
  );
const shuffled = someRules.chain((rules) =>
  fc.shuffledSubarray(rules, { minLength: rules.length, maxLength: rules.length }),
);

describe('byRank', () => {
  test('puts every rule once, and none after one that it outranks', () => {
    fc.assert(
      fc.property(shuffled, (rules) => {
        const ranked = byRank(rules);
        const byId = new Map(rules.map((rule) => [rule.id, rule]));
        expect([...ranked].sort((a, b) => (a.id < b.id ? -1 : 1))).toEqual(
          [...rules].sort((a, b) => (a.id < b.id ? -1 : 1)),
        );
        ranked.forEach((rule, place) => {
          const below = belowOf(rule, byId);
          expect(ranked.slice(0, place).filter((above) => below.has(above.id))).toEqual([]);
        });
      }),
    );
  });

  test('does not care in which order the files were read', () => {
    fc.assert(
      fc.property(someRules, fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })), (rules, luck) => {
        const mixed = rules
          .map((rule) => ({ rule, by: luck.next().value }))
          .sort((a, b) => a.by - b.by)
          .map(({ rule }) => rule);
        expect(byRank(mixed)).toEqual(byRank(rules));
      }),
    );
  });

  test('leaves rules without an order in the order of their ids, and survives a circle', () => {
    const free = ['b', 'c', 'a'].map((name) => ruleOf(name, leaf('age', 'known')));
    expect(byRank(free).map((rule) => rule.says)).toEqual(['a', 'b', 'c']);
    const circle = [
      ruleOf('a', leaf('age', 'known'), { outranks: ['ask/b'] }),
      ruleOf('b', leaf('age', 'known'), { outranks: ['ask/a'] }),
    ];
    expect(
      byRank(circle)
        .map((rule) => rule.says)
        .sort(),
    ).toEqual(['a', 'b']);
  });
});

describe('belowOf', () => {
  test('goes down by way of others, and finds itself only in a circle', () => {
    const rules: readonly Rule[] = [
      ruleOf('a', leaf('age', 'known'), { outranks: ['ask/b'] }),
      ruleOf('b', leaf('age', 'known'), { outranks: ['ask/c', 'ask/gone'] }),
      ruleOf('c', leaf('age', 'known')),
      ruleOf('d', leaf('age', 'known'), { outranks: ['ask/d'] }),
    ];
    const byId = new Map(rules.map((rule) => [rule.id, rule]));
    expect(rules.map((rule) => [...belowOf(rule, byId)])).toEqual([
      ['ask/b', 'ask/c', 'ask/gone'],
      ['ask/c', 'ask/gone'],
      [],
      ['ask/d'],
    ]);
  });
});

describe('choose', () => {
  test('takes the highest that holds; what is unknown above it could still overrule', () => {
    const [failed, open, caution, winner, later] = [
      at('failed', 'a'),
      at('unknown', 'b'),
      at('held', 'c', 'caution'),
      at('held', 'd', 'yes'),
      at('unknown', 'e'),
    ];
    expect(choose([failed, open, caution, winner, later] as RuleOutcome[])).toEqual({ winner, open: [open] });
  });

  test('with none that holds leaves all open that could have spoken', () => {
    const outcomes = [at('unknown', 'a'), at('failed', 'b'), at('unknown', 'c', 'step'), at('unknown', 'd')];
    expect(choose(outcomes)).toEqual({ winner: null, open: [outcomes[0], outcomes[3]] });
    expect(choose([])).toEqual({ winner: null, open: [] });
  });

  test('lets only verdicts win', () => {
    expect(givings.filter((gives) => choose([at('held', 'a', gives)]).winner !== null)).toEqual([
      'yes',
      'no',
      'cannot-say',
      'amount',
      'list',
    ]);
    expect(givings.filter(isVerdict)).toEqual(['yes', 'no', 'cannot-say', 'amount', 'list']);
  });
});
