import { expect, test } from 'vitest';
import { findStrip } from '../../../../cli/understand/find/strip.ts';
import { tokenise } from '../../../../cli/understand/tokens.ts';

test.each([
  ['when can I use strip 3 again', 3],
  ['has lane b rested', 2],
  ['is the first strip free', 1],
  ['paddock four', 4],
  ['strips are 120 ft long', null],
  ['which strip next', null],
  ['moved it 12 feet', null],
])('%s', (words, strip) => {
  expect(findStrip(tokenise(words))).toBe(strip);
});
