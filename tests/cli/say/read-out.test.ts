import { expect, test } from 'vitest';
import { readOut } from '../../../cli/say/read-out.ts';
import type { Token } from '../../../cli/say/tokens.ts';

test.each<[Token, string]>([
  [{ t: 'claim', text: 'Yes, they can go out.' }, 'Yes, they can go out.'],
  [
    { t: 'reason', n: 2, text: 'The low is 52 °F.', outcome: 'held', note: 'common practice' },
    '2. The low is 52 °F, held. common practice.',
  ],
  [{ t: 'reason', n: 1, text: 'The kind is not on record', outcome: null }, '1. The kind is not on record.'],
  [{ t: 'unknown', text: 'rain', tell: null }, 'Not known: rain.'],
  [{ t: 'picture', drawings: [['/\\']], says: 'Weight rises' }, 'Weight rises.'],
  [{ t: 'blank' }, ''],
])('%j is heard as %j', (token, expected) => {
  expect(readOut(token)).toBe(expected);
});
