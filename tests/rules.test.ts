/** The rule files are their own tests: the rulebook loads without a problem, and every case of every rule comes out as it says. */
import { describe, expect, test } from 'vitest';
import { outcomeIn } from '../engine/ask/cases.ts';
import { rulebook } from './helpers/rulebook-of.ts';

const { book, problems } = rulebook();

test('the rulebook has no problem', () => {
  expect(problems).toEqual([]);
});

describe.each(Object.values(book.rules).map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  test.each(rule.cases.map((each) => [each.name, each] as const))('%s', async (_name, each) => {
    expect(await outcomeIn(book, rule, each)).toBe(each.expect);
  });
});
