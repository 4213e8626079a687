/** Which reasons are given, in which order, and what is worth asking for, over outcomes made up by hand. */
import { describe, expect, test } from 'vitest';
import { missingFor, reasonsFor, type Told } from '../../../engine/explain/why.ts';
import { choose } from '../../../engine/reason/choose.ts';
import type { LeafOutcome, RuleOutcome } from '../../../engine/reason/outcomes.ts';
import type { FigureUse, Gives, Missing, Outcome } from '../../../engine/types.ts';
import { leaf, ruleOf } from '../../helpers/rules-of.ts';

const use: FigureUse = {
  id: 'out/youngest',
  value: 14,
  unit: 'day',
  from: '2026-01-01',
  source: 'own-judgement',
  own: false,
};

const at = (fact: string, outcome: Outcome, side: Partial<LeafOutcome['leaf']> = {}): LeafOutcome => ({
  leaf: leaf(fact, 'at-least', side),
  outcome,
  left: outcome === 'unknown' ? undefined : 3,
  right: 2,
});
const rule = (
  name: string,
  outcome: Outcome,
  deciding: readonly LeafOutcome[],
  more: { readonly gives?: Gives; readonly leaves?: readonly LeafOutcome[] } = {},
): RuleOutcome => ({
  rule: ruleOf(name, { all: [] }, { gives: more.gives ?? 'no' }),
  outcome,
  deciding,
  leaves: more.leaves ?? deciding,
});

const toldOf = (...outcomes: readonly RuleOutcome[]): Told => ({
  choice: choose(outcomes),
  outcomes,
  group: 'reds',
  filling: {
    group: 'reds',
    on: '2026-05-08',
    until: null,
    fact: () => ({ value: 3, unit: 'day' }),
    figure: () => use,
  },
  figure: () => use,
  unitOf: () => 'day',
});
const told = (...outcomes: readonly RuleOutcome[]): string[] =>
  reasonsFor(toldOf(...outcomes)).map(
    ({ rule: id, fact, outcome }) => `${id.slice(4)} ${fact.id} ${outcome}`,
  );

describe('reasons', () => {
  test('begin with what decided, then the rest of that rule that held', () => {
    const [first, second] = [at('age', 'held'), at('low', 'held')];
    const winner = rule('a', 'held', [second], {
      leaves: [first, at('wind', 'failed'), second, at('rain', 'unknown')],
    });
    expect(told(winner)).toEqual(['a low held', 'a age held']);
  });

  test('go on with the other rules that hold and with those that could still overrule', () => {
    const open = rule('open', 'unknown', [at('cover', 'unknown')]);
    const winner = rule('winner', 'held', [at('age', 'held')], { gives: 'yes' });
    const also = rule('also', 'held', [at('low', 'held')], { gives: 'yes' });
    const failed = rule('failed', 'failed', [at('room', 'failed')]);
    expect(told(open, winner, also, failed)).toEqual([
      'winner age held',
      'also low held',
      'open cover unknown',
    ]);
  });

  test('leave out what could only say the same, and what settles nothing', () => {
    const open = rule('open', 'unknown', [at('cover', 'unknown')]);
    const caution = rule('caution', 'held', [at('dark', 'held')], { gives: 'caution' });
    expect(told(open, caution, rule('winner', 'held', [at('age', 'held')]))).toEqual(['winner age held']);
  });

  test('give a comparison once, however many rules make it', () => {
    const held = [at('age', 'held', { figure: 'out/youngest' }), at('age', 'held', { other: 'low' })];
    expect(told(rule('a', 'held', held), rule('b', 'held', [...held, at('age', 'held')]))).toEqual([
      'a age held',
      'a age held',
      'b age held',
    ]);
  });

  test('without a verdict are what is not known, rule by rule', () => {
    const failed = at('age', 'failed');
    expect(
      told(
        rule('a', 'unknown', [at('low', 'unknown')], { leaves: [at('age', 'held'), at('low', 'unknown')] }),
        rule('b', 'failed', [failed]),
        rule('c', 'unknown', [at('room', 'unknown')], { gives: 'yes' }),
      ),
    ).toEqual(['a low unknown', 'c room unknown']);
  });

  test('carry the values that were compared, the figure as used, and the source of the rule', () => {
    const compared = [at('age', 'held', { figure: 'out/youngest' }), at('low', 'held', { other: 'floor' })];
    expect(reasonsFor(toldOf(rule('a', 'held', compared)))).toEqual([
      {
        rule: 'ask/a',
        group: 'reds',
        outcome: 'held',
        says: { template: 'age at-least', values: {} },
        fact: { id: 'age', value: 3, unit: 'day' },
        operator: 'at-least',
        figure: use,
        other: null,
        source: 'own-judgement',
        why: 'a',
      },
      {
        rule: 'ask/a',
        group: 'reds',
        outcome: 'held',
        says: { template: 'low at-least', values: {} },
        fact: { id: 'low', value: 3, unit: 'day' },
        operator: 'at-least',
        figure: null,
        other: { id: 'floor', value: 2, unit: 'day' },
        source: 'own-judgement',
        why: 'a',
      },
    ]);
  });
});

describe('what is asked for', () => {
  const missing: Readonly<Record<string, readonly Missing[]>> = {
    low: [{ fact: 'night-low', group: null }],
    floor: [
      { fact: 'age', group: 'reds' },
      { fact: 'night-low', group: null },
    ],
    cover: [{ fact: 'pen-cover', group: null }],
  };
  const asked = (...outcomes: readonly RuleOutcome[]): string[] =>
    missingFor(toldOf(...outcomes), (fact) => missing[fact] ?? []).map(({ fact }) => fact);
  const open = (name: string, fact: string, gives: Gives, side = {}) =>
    rule(name, 'unknown', [at(fact, 'unknown', side)], { gives });

  test('is the root of what both sides wait for, each once', () => {
    expect(asked(open('a', 'low', 'no', { other: 'floor' }), open('b', 'cover', 'yes'))).toEqual([
      'night-low',
      'age',
      'pen-cover',
    ]);
  });

  test('is nothing that could only lead to the same verdict, except to another amount', () => {
    const winner = (gives: Gives) => rule('z', 'held', [at('age', 'held')], { gives });
    expect(asked(open('a', 'low', 'no'), open('b', 'cover', 'yes'), winner('no'))).toEqual(['pen-cover']);
    expect(asked(open('a', 'low', 'amount'), winner('amount'))).toEqual(['night-low']);
    expect(asked(winner('no'), open('a', 'low', 'yes'))).toEqual([]);
  });
});
