/** Parts read one by one: whatever is asked of the record, it is the plain one. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { joinParts, openParts, toAscii } from '../../cli/parts.ts';

const opened = (parts: Readonly<Record<string, unknown>>, before = '') => {
  const { places, text } = joinParts(parts, before);
  return openParts<unknown>(places, text);
};

test('what is looked up, listed, spread or written out is what was put in', () => {
  fc.assert(
    fc.property(
      fc.dictionary(fc.string(), fc.jsonValue()),
      fc.string({ unit: 'grapheme-ascii' }),
      (parts, before) => {
        const record = opened(parts, before);
        expect(Object.entries(record)).toEqual(Object.entries(JSON.parse(JSON.stringify(parts))));
        expect({ ...record }).toEqual(JSON.parse(JSON.stringify(parts)));
        expect(JSON.stringify(record)).toBe(JSON.stringify(parts));
      },
    ),
  );
});

test('nothing is there that was not put in, not even what every object has', () => {
  const record = opened({ rain: 1 });
  expect([record.rain, record.snow, Object.hasOwn(record, 'snow'), 'snow' in record]).toEqual([
    1,
    undefined,
    false,
    false,
  ]);
});

test('a part is read when it is wanted, not before', () => {
  const { places, text } = joinParts({ good: [1], bad: [2] }, '');
  const record = openParts<unknown>(places, text.replace('[2]', '[2!'));
  expect(record.good).toEqual([1]);
  expect(Object.keys(record)).toEqual(['good', 'bad']);
  expect(() => record.bad).toThrow(SyntaxError);
});

test('the text is ASCII, and says the same', () => {
  const said = { degrees: '38 °F – “cold”', bird: '🐔', tab: 'a\tb\u007f' };
  expect(toAscii(said)).toMatch(/^[ -~]*$/);
  expect(JSON.parse(toAscii(said))).toEqual(said);
});
