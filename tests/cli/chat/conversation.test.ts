import { expect, test } from 'vitest';
import { beginWith, type Conversation, type Event, follow } from '../../../cli/chat/conversation.ts';
import type { Token } from '../../../cli/say/tokens.ts';

const tokens: readonly Token[] = [{ t: 'claim', text: 'Yes.' }];
const width = 80;
const empty = beginWith({ opening: [], width });
const play = (start: Conversation, ...events: readonly Event[]): Conversation => events.reduce(follow, start);

test('nothing stands in a conversation without an opening', () => {
  expect(empty).toEqual({ lines: [], over: false, width, slow: null });
});

test('lines are numbered in the order in which they were said, each with the width it is written in', () => {
  const asked = play(
    beginWith({ opening: tokens, width }),
    { t: 'said', words: 'can they go out' },
    { t: 'resized', width: 60 },
    { t: 'told', tokens, leaves: false },
  );
  expect(asked).toEqual({
    lines: [
      { t: 'told', id: 0, tokens, width: 80 },
      { t: 'said', id: 1, words: 'can they go out' },
      { t: 'told', id: 2, tokens, width: 60 },
    ],
    over: false,
    width: 60,
    slow: null,
  });
});

test('it is over after words that leave, and stays over', () => {
  const left = play(empty, { t: 'told', tokens, leaves: true });
  expect([left.over, play(left, { t: 'told', tokens, leaves: false }).over]).toEqual([true, true]);
});

test('leaving without words adds none', () => {
  expect(play(empty, { t: 'left' })).toEqual({ ...empty, over: true });
});

test('what takes long is named until it is answered', () => {
  const slow = play(empty, { t: 'said', words: 'plan' }, { t: 'slow', words: 'plan' });
  expect(slow.slow).toBe('plan');
  expect(play(slow, { t: 'told', tokens, leaves: false }).slow).toBeNull();
});

test('what is drawn anew stands as told, in the width of the window now', () => {
  const drawn = play(
    empty,
    { t: 'told', tokens: [...tokens, ...tokens], leaves: false },
    { t: 'resized', width: 60 },
    { t: 'redrawn', tokens },
  );
  expect(drawn.lines.map((line) => [line.id, line.t === 'told' ? line.width : null])).toEqual([
    [0, 80],
    [1, 60],
  ]);
});
