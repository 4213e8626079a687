import { expect, test } from 'vitest';
import { beginWith, follow } from '../../../cli/chat/conversation.ts';
import type { Token } from '../../../cli/say/tokens.ts';

const tokens: readonly Token[] = [{ t: 'claim', text: 'Yes.' }];

test('nothing stands in a conversation without an opening', () => {
  expect(beginWith([])).toEqual({ lines: [], over: false });
});

test('lines are numbered in the order in which they were said', () => {
  const asked = follow(beginWith(tokens), { t: 'said', words: 'can they go out' });
  expect(follow(asked, { t: 'told', tokens, leaves: false })).toEqual({
    lines: [
      { t: 'told', id: 0, tokens },
      { t: 'said', id: 1, words: 'can they go out' },
      { t: 'told', id: 2, tokens },
    ],
    over: false,
  });
});

test('it is over after words that leave, and stays over', () => {
  const left = follow(beginWith([]), { t: 'told', tokens, leaves: true });
  const late = follow(left, { t: 'told', tokens, leaves: false });
  expect([left.over, late.over]).toEqual([true, true]);
});

test('leaving without words adds none', () => {
  expect(follow(beginWith([]), { t: 'left' })).toEqual({ lines: [], over: true });
});
