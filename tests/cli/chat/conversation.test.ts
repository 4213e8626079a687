import { describe, expect, test } from 'vitest';
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

describe('a window that has another size', () => {
  const picture: Token = {
    t: 'picture',
    drawings: [['#'.repeat(100)], ['#'.repeat(80)], ['#'.repeat(60)]],
    says: 'Weight rises.',
  };
  const shown = play(empty, { t: 'told', tokens: [...tokens, picture], leaves: false });
  const settle = (columns: number, from = shown): Conversation =>
    play(from, { t: 'resized', width: columns }, { t: 'settled' });

  test('gets the pictures of the newest answer drawn for it, once', () => {
    const narrow = settle(70);
    expect(narrow.lines.slice(1)).toEqual([{ t: 'told', id: 1, tokens: [picture], width: 70 }]);
    expect(follow(narrow, { t: 'settled' })).toBe(narrow);
    expect(settle(120, narrow).lines.at(-1)).toEqual({ t: 'told', id: 2, tokens: [picture], width: 120 });
  });

  test('gets none where they would be the same, where it has not settled, or where something was said since', () => {
    expect(settle(95).lines).toEqual(shown.lines);
    expect(follow(shown, { t: 'resized', width: 60 }).lines).toEqual(shown.lines);
    const said = follow(shown, { t: 'said', words: 'why' });
    expect(settle(60, said).lines).toEqual(said.lines);
  });
});
