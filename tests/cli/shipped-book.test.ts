/** The shipped form of the rulebook says what the rule files say. */
import { expect, test } from 'vitest';
import { openShipped, shipBook } from '../../cli/shipped-book.ts';
import { readRules } from '../helpers/read-rules.ts';

test('a rulebook shipped and opened again is the same rulebook', () => {
  const book = readRules();
  const files = shipBook(book);
  const again = openShipped((name) => files[name]);
  expect(JSON.parse(JSON.stringify(again))).toEqual(JSON.parse(JSON.stringify(book)));
  for (const kind of ['rules', 'facts', 'sources', 'assumptions'] as const)
    expect(Object.keys(again[kind])).toEqual(Object.keys(book[kind]));
});
