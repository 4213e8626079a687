import fc from 'fast-check';
import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { wrap } from '../../../cli/say/wrap.ts';

test.each([
  ['a text that fits', 'one two', 10, 0, ['one two']],
  ['words at their spaces', 'one two three', 8, 0, ['one two', 'three']],
  ['a row filled to its last column', 'one two', 7, 0, ['one two']],
  ['later rows with an indent', '1. one two three', 10, 3, ['1. one two', '   three']],
  ['a word that is too long', 'a abcdefghij', 4, 0, ['a', 'abcd', 'efgh', 'ij']],
  ['wide characters by their columns', '水水水', 4, 0, ['水水', '水']],
  ['no break at a hard space', 'about 50\u00a0°F', 9, 0, ['about', '50\u00a0°F']],
  ['nothing', '', 10, 0, ['']],
])('wraps %s', (_name, text, width, hang, expected) => {
  expect(wrap(text, width, hang)).toEqual(expected);
});

test('no row is too wide and no word is lost', () => {
  const word = fc.string({ unit: fc.constantFrom('a', '水', 'é', '-'), minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(fc.array(word), fc.integer({ min: 8, max: 40 }), fc.nat(4), (words, width, hang) => {
      const rows = wrap(words.join(' '), width, hang);
      expect(Math.max(...rows.map((row) => stringWidth(row)))).toBeLessThanOrEqual(width);
      expect(rows.join('').replaceAll(' ', '')).toBe(words.join(''));
    }),
  );
});
