import { expect, test } from 'vitest';
import { toAscii } from '../../../cli/say/ascii.ts';

test.each([
  ['plain words, 50 lb', 'plain words, 50 lb'],
  ['50 °F – held', '50 F - held'],
  ['turned by 30°', 'turned by 30 deg'],
  ['4 ft × 6 ft, 2 m², ½ acre…', '4 ft x 6 ft, 2 m2, 1/2 acre...'],
  ['“Zoë’s reds”', '"Zoe\'s reds"'],
  ['水 for the reds 🐔', '? for the reds ?'],
])('%j is shown as %j', (text, expected) => {
  expect(toAscii(text)).toBe(expected);
});
