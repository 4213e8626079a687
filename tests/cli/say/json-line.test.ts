import { expect, test } from 'vitest';
import { clean } from '../../../cli/say/clean.ts';
import { jsonLine } from '../../../cli/say/json-line.ts';

const hidden = 'a\x1b[31m\x9b2J\u202eb\u200b\u2028c\ud83d\ufeff';

test('what no terminal shows is escaped, and means the same when parsed', () => {
  const line = jsonLine({ words: hidden, [hidden]: '50\u00a0°F, 👩‍🌾' });
  expect(line).toBe(
    '{"words":"a\\u001b[31m\\u009b2J\\u202eb\\u200b\\u2028c\\ud83d\\ufeff",' +
      '"a\\u001b[31m\\u009b2J\\u202eb\\u200b\\u2028c\\ud83d\\ufeff":"50\u00a0°F, 👩‍🌾"}',
  );
  expect(JSON.parse(line)).toEqual({ words: hidden, [hidden]: '50\u00a0°F, 👩‍🌾' });
});

test('cleaning leaves such a line as it is', () => {
  const line = jsonLine([hidden, String.fromCodePoint(0xe0069)]);
  expect(clean(line)).toBe(line);
});
