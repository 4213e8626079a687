import { expect, test } from 'vitest';
import { clean } from '../../../cli/say/clean.ts';

test.each([
  ['a colour', 'a\x1b[31mred\x1b[0m', 'ared'],
  ['a title', '\x1b]0;title\x07here', 'here'],
  ['a link', '\x1b]8;;http://example.org\x07here\x1b]8;;\x07', 'here'],
  ['a one-byte escape', 'a\x9b31mb', 'ab'],
  ['an escape put together by its own removal', '\x1b\x1b[31m[31mx', '[31mx'],
  ['a bell and a null', 'a\x07\x00b', 'ab'],
  ['direction marks', 'a\u202eb\u2066c\u200fd\u061ce', 'abcde'],
  ['hidden spaces', 'a\u200b\ufeffb', 'ab'],
  ['soft hyphens, joiners and fillers', 'a\u00adb\u2060c\u200dd\u200ce\u034ff\u3164g\u180eh', 'abcdefgh'],
  ['letters of the hidden alphabet', `a${String.fromCodePoint(0xe0069, 0xe006e)}b`, 'ab'],
  ['notes between the lines', 'a\ufff9b\ufffac\ufffbd', 'abcd'],
  ['varied letters', 'a\ufe0fb\ufe00c', 'abc'],
  ['half a character', 'a\ud83d', 'a\ufffd'],
])('%s does not get through', (_name, text, expected) => {
  expect(clean(text)).toBe(expected);
});

test('line ends and tabs become one space each; spaces stay as typed', () => {
  expect(clean(' a\r\nb\tc\u2028d  e ')).toBe(' a b c d  e ');
});

test('letters, signs and joined emoji stay whole', () => {
  expect(clean('Größe 50\u00a0°F ± ½, 水, 👩‍🌾, 🌡️, 👩🏽‍🌾, e\u0301')).toBe(
    'Größe 50\u00a0°F ± ½, 水, 👩‍🌾, 🌡️, 👩🏽‍🌾, e\u0301',
  );
});
