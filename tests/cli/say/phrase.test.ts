/** Wordings of the rulebook filled with their values. */
import { expect, test } from 'vitest';
import { listed } from '../../../cli/say/listed.ts';
import { capital, fill, phrase } from '../../../cli/say/phrase.ts';
import type { Speech } from '../../../cli/say/speech.ts';
import { smallRulebook } from '../../helpers/small-rulebook.ts';

const speech: Speech = { book: smallRulebook().book, system: 'us', currency: '$', today: '2026-05-08' };

test('every name is said in its unit, as often as it stands there', () => {
  const template = '{group} at {age}: {night-low}, {night-low}, {out/youngest}, {on}, {gone}';
  const values = {
    group: { value: 'reds', unit: null },
    age: { value: 1, unit: 'day' },
    'night-low': { value: 10, unit: 'C' },
    'out/youngest': { value: null, unit: 'day' },
    on: { value: '2026-05-09', unit: 'date' },
  };
  // A name without a value is a mistake in the rulebook, and better seen than hidden.
  expect(phrase(speech, { template, values })).toBe(
    'reds at 1 day: 50 °F, 50 °F, not known, Saturday 9 May, {gone}',
  );
});

test('a value is never taken for a wording', () => {
  const said = ['{age}', '$& $1 $$', '\\'].map((value) =>
    fill(speech, 'the {group}', { group: { value, unit: null }, age: { value: 3, unit: 'day' } }),
  );
  expect(said).toEqual(['the {age}', 'the $& $1 $$', 'the \\']);
  expect(fill(speech, '{toString} {__proto__}', {})).toBe('{toString} {__proto__}');
});

test('a line begins large, whatever its first letter, and a list ends in and', () => {
  expect(['reds are out', 'été', '3 birds', ''].map(capital)).toEqual(['Reds are out', 'Été', '3 birds', '']);
  expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(listed)).toEqual(['', 'a', 'a and b', 'a, b and c']);
});
