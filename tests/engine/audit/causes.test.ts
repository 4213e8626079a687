/** The decisive cause of a difference: one alone, two together, one of several, or none that can be replayed. */
import { expect, test } from 'vitest';
import { explainDifference } from '../../../engine/audit/causes.ts';
import { keyOf, type Points } from '../../../engine/audit/difference.ts';
import type { Cause, Difference, Point, Value } from '../../../engine/types.ts';

const told = (line: number): Cause => ({
  kind: 'entry',
  line,
  entry: 'loss',
  on: '2026-05-10',
  how: 'told',
  of: null,
});
const days: Cause = { kind: 'days', from: '2026-05-09', to: '2026-05-10' };
const [nine, eight, seven] = [told(9), told(8), told(7)];
const all: readonly Cause[] = [nine, eight, seven, days];

const difference = (from: Value, to: Value): Difference => ({
  what: typeof from === 'number' ? 'result' : 'verdict',
  id: typeof from === 'number' ? 'feed' : 'verdict',
  fact: typeof from === 'number' ? 'feed' : null,
  group: 'reds',
  from,
  to,
  unit: null,
  size: typeof from === 'number' && typeof to === 'number' ? to - from : null,
});

const pointsWith = (of: Difference, value: Value, rule = 'r/one'): Points =>
  new Map(
    [
      { ...of, value } as Point,
      { what: 'rule', id: 'rule', fact: null, group: of.group, value: rule, unit: null } as const,
    ].map((each) => [keyOf(each), each]),
  );

/** Explains over a made-up world: what the point is worth, and by which rule, once these causes are undone. */
const explain = async (
  of: Difference,
  worth: (undone: readonly Cause[]) => readonly [Value, string?],
  suspects: readonly Cause[] = all,
  known: readonly (readonly Cause[])[] = [],
) => {
  const tried: string[] = [];
  const name = (cause: Cause): string => (cause.kind === 'entry' ? String(cause.line) : cause.kind);
  const { causes, effects } = await explainDifference(
    of,
    pointsWith(of, of.from ?? ''),
    { all: suspects, likely: suspects },
    async (undone) => {
      tried.push(undone.map(name).join('+'));
      return pointsWith(of, ...worth(undone));
    },
    known,
  );
  return {
    causes: causes.map(name),
    effects: effects.map(({ cause, without, isUndone }) => [name(cause), without, isUndone]),
    tried,
  };
};

const has = (undone: readonly Cause[], ...causes: readonly Cause[]): boolean =>
  causes.every((each) => undone.includes(each));

test('one cause alone', async () => {
  const found = await explain(difference('yes', 'no'), (undone) => [has(undone, eight) ? 'yes' : 'no']);
  expect(found).toEqual({
    causes: ['8'],
    effects: [['8', 'yes', true]],
    tried: ['9+8+7', '9', '8', '7', 'days'],
  });
});

test('of several that would do alone, the first; the others are told as well', async () => {
  const found = await explain(difference('yes', 'no'), (undone) => [
    has(undone, seven) || has(undone, days) ? 'yes' : 'no',
  ]);
  expect([found.causes, found.effects]).toEqual([
    ['7'],
    [
      ['7', 'yes', true],
      ['days', 'yes', true],
    ],
  ]);
});

test('one that also brings back the rule of then goes before one that only brings back the verdict', async () => {
  const found = await explain(difference('yes', 'no'), (undone) => [
    has(undone, seven) || has(undone, days) ? 'yes' : 'no',
    has(undone, days) ? 'r/one' : 'r/two',
  ]);
  expect(found.causes).toEqual(['days']);
});

test('two that only together bring it back', async () => {
  const found = await explain(difference('yes', 'no'), (undone) => [
    has(undone, nine, days) ? 'yes' : has(undone, nine) ? 'cannot-say' : 'no',
  ]);
  expect([found.causes, found.effects]).toEqual([['9', 'days'], [['9', 'cannot-say', false]]]);
});

test('a pair is found where halving first comes upon three', async () => {
  const enough = (undone: readonly Cause[]): boolean =>
    has(undone, nine, eight, seven) || (has(undone, seven, days) && !undone.includes(eight));
  const found = await explain(difference('yes', 'no'), (undone) => [
    enough(undone) || undone.length === 4 ? 'yes' : 'no',
  ]);
  expect(found.causes).toEqual(['7', 'days']);
});

test('amounts: what each cause moves by itself, the one that comes nearest to the old amount first', async () => {
  const found = await explain(difference(10, 15), (undone) => [
    15 - (has(undone, eight) ? 1 : 0) - (has(undone, days) ? 4 : 0),
  ]);
  expect([found.causes, found.effects]).toEqual([
    ['days', '8'],
    [
      ['days', 11, false],
      ['8', 14, false],
    ],
  ]);
});

test('nothing that can be replayed brings it back', async () => {
  const found = await explain(difference('yes', 'no'), () => ['no']);
  expect(found).toEqual({ causes: [], effects: [], tried: ['9+8+7', 'days', '9+8+7+days'] });
});

test('a day found by looking ahead is not tried with every entry', async () => {
  const ahead: Difference = { ...difference('yes', 'no'), what: 'result', id: 'first-day', fact: 'when' };
  const found = await explain(ahead, (undone) => [has(undone, eight) ? 'yes' : 'no']);
  expect([found.causes, found.tried[0]]).toEqual([['8'], 'days']);
});

test('entries that together make nothing of it are not tried one by one', async () => {
  const found = await explain(difference(10, 15), (undone) => [has(undone, days) ? 10 : 15]);
  expect(found).toEqual({ causes: ['days'], effects: [['days', 10, true]], tried: ['9+8+7', 'days'] });
});

test('where entries only move it and the day alone brings it back, none of them is tried one by one', async () => {
  const found = await explain(difference(10, 15), (undone) => [
    has(undone, days) ? 10 : has(undone, eight) ? 14 : 15,
  ]);
  const tried = ['9+8+7', 'days', 'days'];
  expect(found).toEqual({ causes: ['days'], effects: [['days', 10, true]], tried });
});

test('what moved another difference is looked at first, and left out as far as it is not needed', async () => {
  const ahead: Difference = { ...difference('yes', 'no'), what: 'result', id: 'first-day', fact: 'when' };
  const found = await explain(ahead, (undone) => [has(undone, nine, seven) ? 'yes' : 'no'], all, [
    [eight],
    [nine, seven, days],
  ]);
  expect([found.causes, found.tried]).toEqual([
    ['9', '7'],
    ['days', '8', '9+7+days', '7+days', '9+days', '9+7'],
  ]);
});
