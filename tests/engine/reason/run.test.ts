/** One run over several rules: the order of the rules given, both sides of every leaf, and no run in another's way. */
import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../../engine/reason/outcomes.ts';
import { runRules, type Values } from '../../../engine/reason/run.ts';
import type { Condition, Value } from '../../../engine/types.ts';
import { leaf, ruleOf } from '../../helpers/rules-of.ts';

const valuesOf = (facts: Record<string, Value>, figures: Record<string, number> = {}): Values => ({
  fact: (id) => facts[id],
  figure: (id) => figures[id],
});

const old = leaf('age', 'at-least', { figure: 'out/youngest' });
const warm = leaf('low', 'at-least', { other: 'floor' });
const inside = leaf('place', 'one-of', { value: ['brooder', 'pen'] });
const covered = leaf('covered', 'is', { value: true });

const nestedTo = (depth: number, when: Condition): Condition =>
  depth === 0 ? when : { all: [nestedTo(depth - 1, when)] };

describe('a run', () => {
  test('gives both sides of every leaf, the ones that did not decide too', async () => {
    const when = { all: [old, { any: [warm, { not: inside }] }, covered] };
    const values = valuesOf({ age: 20, low: 8, place: 'pen' }, { 'out/youngest': 14 });
    const [result] = await runRules([ruleOf('may-go', when)], values);
    if (result === undefined) throw new Error('no result');
    const outcome = outcomeOf(result);
    const leaves = [
      { leaf: old, outcome: 'held', left: 20, right: 14 },
      { leaf: warm, outcome: 'unknown', left: 8, right: undefined },
      { leaf: inside, outcome: 'held', left: 'pen', right: ['brooder', 'pen'] },
      { leaf: covered, outcome: 'unknown', left: undefined, right: true },
    ];
    expect(outcome).toEqual({
      rule: result.rule,
      outcome: 'unknown',
      deciding: [leaves[1], leaves[3]],
      leaves,
    });
  });

  test('names the leaves that decided: the failed ones of all, the held ones of any', async () => {
    const facts = { age: 3, low: 8, floor: 5, place: 'pen', covered: false };
    const rules = [
      ruleOf('all', { all: [old, covered, warm] }),
      ruleOf('any', { any: [old, warm, inside] }),
      ruleOf('none', { any: [old, covered] }),
      ruleOf('every', { all: [warm, inside] }),
      ruleOf('turned', { not: { any: [old, warm] } }),
    ];
    const results = await runRules(rules, valuesOf(facts, { 'out/youngest': 14 }));
    const told = results
      .map(outcomeOf)
      .map(({ rule, outcome, deciding }) => [rule.says, outcome, deciding.map((each) => each.leaf.fact)]);
    expect(told).toEqual([
      ['all', 'failed', ['age', 'covered']],
      ['any', 'held', ['low', 'place']],
      ['none', 'failed', ['age', 'covered']],
      ['every', 'held', ['low', 'place']],
      ['turned', 'failed', ['low']],
    ]);
  });

  test('keeps the order of the rules, however long each takes', async () => {
    const rules = [5, 0, 9, 2, 7, 1].map((depth) => ruleOf(`deep-${depth}`, nestedTo(depth, old)));
    const results = await runRules(rules, valuesOf({ age: 14 }, { 'out/youngest': 14 }));
    expect(results.map(({ rule, engineHeld }) => [rule.id, engineHeld])).toEqual(
      rules.map((rule) => [rule.id, true]),
    );
  });

  test('compares days as they follow each other', async () => {
    const rules = ['less-than', 'at-most', 'is', 'at-least', 'more-than'].map((operator) =>
      ruleOf(operator, leaf('ready', operator, { other: 'window' })),
    );
    const heldOn = async (ready: string): Promise<string[]> =>
      (await runRules(rules, valuesOf({ ready, window: '2026-06-10' })))
        .filter((each) => each.engineHeld)
        .map(({ rule }) => rule.says);
    expect(await heldOn('2026-06-09')).toEqual(['less-than', 'at-most']);
    expect(await heldOn('2026-06-10')).toEqual(['at-most', 'is', 'at-least']);
    expect(await heldOn('2026-10-01')).toEqual(['at-least', 'more-than']);
  });

  test('does not disturb another that overlaps it', async () => {
    const rules = [3, 0, 6].map((depth) => ruleOf(`deep-${depth}`, nestedTo(depth, old)));
    const ages = Array.from({ length: 30 }, (_, age) => age);
    const runs = await Promise.all(
      ages.map((age) => runRules(rules, valuesOf({ age }, { 'out/youngest': 14 }))),
    );
    expect(runs.map((results) => results.map((each) => each.engineHeld))).toEqual(
      ages.map((age) => rules.map(() => age >= 14)),
    );
  });

  test('refuses a comparison that it does not know: a rulebook with one is never run', async () => {
    const rules = [ruleOf('odd', leaf('age', 'roughly', { value: 1 }))];
    await expect(runRules(rules, valuesOf({}))).rejects.toThrow('no such operator: roughly');
  });
});

describe('a figure and a fact of one name', () => {
  test('are told apart', async () => {
    const rules = [ruleOf('same', leaf('floor', 'is', { figure: 'floor' }))];
    const [result] = await runRules(rules, valuesOf({ floor: 1 }, { floor: 2 }));
    expect(result?.engineHeld).toBe(false);
  });
});

test('between two runs a timer goes off, so that keys are shown while an answer is worked out', async () => {
  const seen: string[] = [];
  const ticked = new Promise<void>((resolve) =>
    setTimeout(() => {
      seen.push('timer');
      resolve();
    }, 0),
  );
  let isTicked = false;
  void ticked.then(() => {
    isTicked = true;
  });
  for (let runs = 0; !isTicked && runs < 10_000; runs += 1) {
    await runRules([ruleOf('may-go', old)], valuesOf({ age: 20 }, { 'out/youngest': 14 }));
  }
  seen.push('answer');
  expect(seen).toEqual(['timer', 'answer']);
});
