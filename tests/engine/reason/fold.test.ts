/** The three-valued fold against two judges: the rule engine's own verdict, and Kleene's logic written down once more. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outcomeOf } from '../../../engine/reason/outcomes.ts';
import { runRules, type Values } from '../../../engine/reason/run.ts';
import type { Condition, Leaf, Outcome, Value } from '../../../engine/types.ts';
import { leaf, ruleOf } from '../../helpers/rules-of.ts';

type World = Readonly<Record<string, Value | undefined>>;

const numbers = ['age', 'low', 'floor'];
const choices = ['place', 'kind'];
const flags = ['covered'];
const figures = ['least', 'most'];
const names = ['brooder', 'pen', 'gone'];

// Few values, so that both sides are often the same.
const number = fc.integer({ min: -1, max: 2 });
const name = fc.constantFrom(...names);

const ordered = fc
  .tuple(
    fc.constantFrom(...numbers),
    fc.constantFrom('less-than', 'at-most', 'more-than', 'at-least', 'is', 'is-not'),
    fc.oneof(
      fc.constantFrom(...figures).map((figure) => ({ figure })),
      fc.constantFrom(...numbers).map((other) => ({ other })),
      fc.constantFrom(0, 1).map((value) => ({ value })),
    ),
  )
  .map(([fact, operator, side]) => leaf(fact, operator, side));
const chosen = fc.oneof(
  fc
    .tuple(fc.constantFrom(...choices), fc.constantFrom('is', 'is-not'), name)
    .map(([fact, operator, value]) => leaf(fact, operator, { value })),
  fc
    .tuple(fc.constantFrom(...choices), fc.constantFrom('is', 'is-not'), fc.constantFrom(...choices))
    .map(([fact, operator, other]) => leaf(fact, operator, { other })),
  fc
    .tuple(
      fc.constantFrom(...choices),
      fc.constantFrom('one-of', 'none-of'),
      fc.uniqueArray(name, { minLength: 1 }),
    )
    .map(([fact, operator, value]) => leaf(fact, operator, { value })),
);
const flagged = fc
  .tuple(fc.constantFrom(...flags), fc.constantFrom('is', 'is-not'), fc.boolean())
  .map(([fact, operator, value]) => leaf(fact, operator, { value }));
const known = fc
  .tuple(fc.constantFrom(...numbers, ...choices), fc.constantFrom(null, ...figures))
  .map(([fact, figure]) => leaf(fact, 'known', { figure }));

const { condition } = fc.letrec<{ condition: Condition; leaf: Leaf; list: Condition[] }>((tie) => ({
  leaf: fc.oneof(ordered, chosen, flagged, known),
  list: fc.array(tie('condition'), { minLength: 1, maxLength: 4 }),
  condition: fc.oneof(
    { depthSize: 'small' },
    tie('leaf'),
    tie('list').map((all) => ({ all })),
    tie('list').map((any) => ({ any })),
    tie('condition').map((not) => ({ not })),
  ),
}));

const full = fc.record({
  age: number,
  low: number,
  floor: number,
  place: name,
  kind: name,
  covered: fc.boolean(),
  least: number,
  most: number,
});
/** The same with some of it not known. */
const partial = fc
  .tuple(full, fc.uniqueArray(fc.constantFrom(...numbers, ...choices, ...flags, ...figures)))
  .map(([all, unknown]): World => ({ ...all, ...Object.fromEntries(unknown.map((id) => [id, undefined])) }));

const valuesOf = (world: World): Values => ({
  fact: (id) => world[id],
  figure: (id) => world[id] as number | undefined,
});

const fold = async (when: Condition, world: World) => {
  const [result] = await runRules([ruleOf('one', when)], valuesOf(world));
  if (result === undefined) throw new Error('no result');
  return { outcome: outcomeOf(result).outcome, engineHeld: result.engineHeld };
};

/** True 1, unknown 0, false −1: then `all` is the least, `any` the most, and `not` turns the sign. */
const kleene = (when: Condition, world: World): number => {
  if ('all' in when) return Math.min(...when.all.map((each) => kleene(each, world)));
  if ('any' in when) return Math.max(...when.any.map((each) => kleene(each, world)));
  if ('not' in when) return 0 - kleene(when.not, world);
  const left = world[when.fact];
  if (left === undefined) return 0;
  if (when.operator === 'known') return 1;
  const right =
    when.figure !== null ? world[when.figure] : when.other !== null ? world[when.other] : when.value;
  if (right === undefined || right === null) return 0;
  const holds: Readonly<Record<string, boolean>> = {
    'less-than': left < right,
    'at-most': left <= right,
    'more-than': left > right,
    'at-least': left >= right,
    is: left === right,
    'is-not': left !== right,
    'one-of': Array.isArray(right) && right.includes(String(left)),
    'none-of': Array.isArray(right) && !right.includes(String(left)),
  };
  return holds[when.operator] === true ? 1 : -1;
};
const inWords = (value: number): Outcome => (value > 0 ? 'held' : value < 0 ? 'failed' : 'unknown');

test('with nothing unknown it is what the rule engine says itself', async () => {
  await fc.assert(
    fc.asyncProperty(condition, full, async (when, world) => {
      const { outcome, engineHeld } = await fold(when, world);
      expect(outcome).toBe(engineHeld ? 'held' : 'failed');
    }),
    { numRuns: 2000 },
  );
});

test('with some of it unknown it is what Kleene says', async () => {
  const seen = { held: 0, failed: 0, unknown: 0 };
  await fc.assert(
    fc.asyncProperty(condition, partial, async (when, world) => {
      const { outcome } = await fold(when, world);
      expect(outcome).toBe(inWords(kleene(when, world)));
      seen[outcome] += 1;
    }),
    { numRuns: 3000 },
  );
  // All three came up often enough for this to have tried something.
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(200);
});

test('learning what was not known never turns what was settled', async () => {
  await fc.assert(
    fc.asyncProperty(condition, partial, full, async (when, before, all) => {
      const now = await fold(when, before);
      const after = Object.fromEntries(Object.entries(all).map(([id, value]) => [id, before[id] ?? value]));
      const then = await fold(when, after);
      if (now.outcome !== 'unknown') expect(then.outcome).toBe(now.outcome);
      expect(then.outcome).not.toBe('unknown');
    }),
    { numRuns: 2000 },
  );
});
