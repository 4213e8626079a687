import fc from 'fast-check';
import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { windowOf } from '../../../../cli/chat/prompt/window-of.ts';

const line = [...'abcdefghijklmnopqrst'];

test.each([
  ['a short line whole', [...'abc'], 3, { text: 'abc', column: 3 }],
  ['the end of a long line', line, 20, { text: '…mnopqrst', column: 9 }],
  ['the start of a long line', line, 0, { text: 'abcdefghi…', column: 0 }],
  ['the middle of a long line', line, 10, { text: '…efghijkl…', column: 7 }],
  ['wide characters by their columns', [...'水水水水水水'], 6, { text: '…水水水水', column: 9 }],
])('shows %s', (_name, graphemes, at, expected) => {
  expect(windowOf(graphemes, at, 10, '…')).toEqual(expected);
});

test('never takes more than the row, and always shows the cursor', () => {
  const grapheme = fc.constantFrom('a', ' ', '水', '👩‍🌾', 'e\u0301');
  fc.assert(
    fc.property(
      fc.array(grapheme),
      fc.nat(),
      fc.integer({ min: 12, max: 40 }),
      fc.constantFrom('…', '...'),
      (graphemes, nth, width, cut) => {
        const { text, column } = windowOf(graphemes, nth % (graphemes.length + 1), width, cut);
        expect(stringWidth(text)).toBeLessThanOrEqual(width);
        expect(column).toBeLessThan(width);
      },
    ),
  );
});
