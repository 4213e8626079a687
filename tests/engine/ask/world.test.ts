/** The rules of a question in the world of one answer: in rank order, those supposed away left out. */
import { expect, test } from 'vitest';
import { rulesOf, type World, withoutSupposedAway } from '../../../engine/ask/world.ts';
import type { Rule } from '../../../engine/types.ts';
import { leaf, ruleOf } from '../../helpers/rules-of.ts';
import { factsOf, world } from '../../helpers/small-flock.ts';

const holds = leaf('a', 'known');
const rules: readonly Rule[] = [
  ruleOf('a-last', holds),
  ruleOf('m-between', holds, { outranks: ['ask/a-last'] }),
  ruleOf('z-first', holds, { outranks: ['ask/m-between'] }),
];
const plain = world(factsOf({}));
const ranked: World = {
  ...plain,
  book: { ...plain.book, rules: Object.fromEntries(rules.map((rule) => [rule.id, rule])) },
};
const ids = (of: World): readonly string[] => rulesOf(of, 'ask').map(({ id }) => id);
const off = (...names: readonly string[]) =>
  names.map((name) => ({ what: { rule: `ask/${name}` }, value: 'off', adds: false }));

test('stand in the order of their rank', () => {
  expect(ids(ranked)).toEqual(['ask/z-first', 'ask/m-between', 'ask/a-last']);
});

test('a rule that is off hands its rank on: those it stood between keep their order', () => {
  expect(ids(withoutSupposedAway(ranked, off('m-between')))).toEqual(['ask/z-first', 'ask/a-last']);
});

test('rules may be off twice, or all of them; other suppositions switch nothing off', () => {
  const once = withoutSupposedAway(ranked, off('z-first'));
  expect(ids(withoutSupposedAway(once, off('a-last', 'z-first')))).toEqual(['ask/m-between']);
  expect(ids(withoutSupposedAway(ranked, off('a-last', 'm-between', 'z-first')))).toEqual([]);
  const fact = [{ what: { fact: 'ask/z-first' }, value: 1, adds: false }];
  expect(withoutSupposedAway(ranked, fact)).toBe(ranked);
});
