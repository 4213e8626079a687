/** The opening of the chat: what cannot wait comes first, and six rows are enough. */
import { expect, test } from 'vitest';
import { plain } from '../../../cli/say/plain.ts';
import type { Token } from '../../../cli/say/tokens.ts';
import { pickOpening } from '../../../cli/talk/opening.ts';

const task = (text: string, done = false): Token => ({ t: 'step', id: 'a/b', text, at: 'morning', done });
const hint = 'Ask or tell anything; "help" shows what, Ctrl-D leaves.';

test('warnings stand before tasks, tasks before what is not known; what is done is left out', () => {
  const opening = pickOpening(
    [],
    [
      { t: 'claim', text: 'Three things.' },
      task('fill the water', true),
      task('move the pen'),
      { t: 'unknown', text: 'the low tonight', tell: null },
      { t: 'caution', text: 'a hunter comes back' },
    ],
    80,
  );
  expect(opening).toEqual([
    { t: 'caution', text: 'a hunter comes back' },
    task('move the pen'),
    { t: 'unknown', text: 'the low tonight', tell: null },
    { t: 'next', text: hint },
  ]);
});

test.each([60, 80, 120])(
  'never fills more than six rows of %i columns, and says how many tasks are left',
  (width) => {
    const tasks = Array.from({ length: 9 }, (_, n) =>
      task(`${'clean and fill the drinkers of the reds '.repeat(2)}${n}`),
    );
    const first: Token[] = [{ t: 'detail', text: 'This is the demo flock.' }];
    const opening = pickOpening(first, tasks, width);
    const shown = opening.filter(({ t }) => t === 'step').length;
    expect(plain(opening, width).length).toBeLessThanOrEqual(6);
    expect(shown).toBeGreaterThan(0);
    expect(opening[0]).toEqual(first[0]);
    expect(opening.at(-1)).toEqual({
      t: 'next',
      text: `And ${9 - shown} more: "what needs doing today". Also: "help", Ctrl-D.`,
    });
  },
);

test('a day with nothing to do opens with the hint alone', () => {
  expect(pickOpening([], [], 80)).toEqual([{ t: 'next', text: hint }]);
});
