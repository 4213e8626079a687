/** Rules compared again: the same results as anew, also where nothing is known or values only look alike. */
import { expect, test } from 'vitest';
import { rememberRuns } from '../../../engine/reason/remember-runs.ts';
import { runRules, type Values } from '../../../engine/reason/run.ts';
import type { Value } from '../../../engine/types.ts';
import { shipped } from '../../helpers/flock-of.ts';

const rules = Object.values(shipped.rules).filter(({ question }) => question === 'go-out');

/** Every fact and figure the same; unlike values that are alike as text. */
const values: readonly (Value | undefined)[] = [undefined, 0, 1, true, 'yes', '1', Number.POSITIVE_INFINITY];

const valuesOf = (value: Value | undefined): Values => ({
  fact: () => value,
  figure: () => (typeof value === 'number' ? value : undefined),
});

test('the same as a run that remembers nothing, the first time and the second', async () => {
  expect(rules.length).toBeGreaterThan(5);
  const run = rememberRuns();
  for (const value of [...values, ...values]) {
    const [again, anew] = [await run(rules, valuesOf(value)), await runRules(rules, valuesOf(value))];
    expect(again).toEqual(anew);
  }
});

test('facts are asked for before figures, in the order of the rules, however much is remembered', async () => {
  const run = rememberRuns();
  const order = async (by: typeof runRules): Promise<readonly string[]> => {
    const asked: string[] = [];
    const noted = (id: string): void => {
      if (!asked.includes(id)) asked.push(id);
    };
    await by(rules, {
      fact: (id) => {
        noted(id);
        return 1;
      },
      figure: (id) => {
        noted(id);
        return 1;
      },
    });
    return asked;
  };
  const plain = await order(runRules);
  expect([await order(run), await order(run)]).toEqual([plain, plain]);
});
