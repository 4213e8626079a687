import { expect, test } from 'vitest';
import { nameOfTerm, sayNamed } from '../../../cli/say/named.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';

const { book } = rulebook();
const speech = { book, system: 'us', currency: '$', today: '2026-05-14' } as const;

test.each([
  ['hawk', 'hawk'],
  ['unknown', 'not known'],
  ['bloody-droppings', 'bloody droppings'],
  ['headless', 'the head missing'],
  ['week-3', 'week 3'],
])('%s is called: %s', (id, name) => {
  expect(nameOfTerm(book, id)).toBe(name);
});

test.each([
  ['', 'nothing'],
  ['hawk', 'hawk'],
  ['raccoon owl weasel', 'raccoon, owl and weasel or mink'],
  ['hawk=2 unknown=1', 'hawk: 2, not known: 1'],
  ['by-day=-2', 'it came by day: −2'],
])('"%s" is said: %s', (value, said) => {
  expect(sayNamed(speech, value)).toBe(said);
});
