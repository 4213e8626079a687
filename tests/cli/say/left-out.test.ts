/** The one line for what no record took. */
import { expect, test } from 'vitest';
import { sayLeftOut } from '../../../cli/say/left-out.ts';

test('one clause, and several', () => {
  expect(sayLeftOut(['delivery 12'])).toBe('Not taken in: "delivery 12". Say it again by itself.');
  expect(sayLeftOut(['delivery 12', 'the other 9 go on friday'])).toBe(
    'Not taken in: "delivery 12" and "the other 9 go on friday". Say each again by itself.',
  );
});
