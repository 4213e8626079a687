import { describe, expect, test } from 'vitest';
import { findWhyNot } from '../../../../cli/understand/find/why-not.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';
import { listener } from '../../../helpers/heard.ts';

const { hear } = listener();
const last = hear('can the reds go out');

describe('what is asked instead begins behind', () => {
  test.each([
    ['why not saturday', 'saturday'],
    ['but why not 60 birds', '60 birds'],
    ['why can not the reds go', 'the reds go'],
    ['why can they not go', 'go'],
    ['what is wrong with saturday', 'saturday'],
    ['what speaks against yes', 'yes'],
  ])('%s', (words, rest) => {
    const tokens = tokenise(words);
    const from = findWhyNot(tokens);
    expect(
      tokens
        .slice(from ?? 0)
        .map(({ word }) => word)
        .join(' '),
    ).toBe(rest);
  });

  test.each(['why', 'why is that', 'why 2', 'can they not go out', 'what is that'])(
    '%s: nothing',
    (words) => {
      expect(findWhyNot(tokenise(words))).toBeNull();
    },
  );
});

test.each([
  ['why not saturday', 'saturday', '2026-05-16'],
  ['why not yes', 'yes', null],
  ["why can't they", 'they', null],
  ['why not', '', null],
  ['what is wrong with saturday', 'saturday', '2026-05-16'],
])('%s is about the last answer', (words, not, on) => {
  const [reading] = hear(words, { before: last }).readings;
  expect([reading?.topic, reading?.slots.not, reading?.on]).toEqual(['why', not, on]);
});

test('why alone asks for no other answer', () => {
  expect(hear('why', { before: last }).readings[0]?.slots.not).toBeUndefined();
});
