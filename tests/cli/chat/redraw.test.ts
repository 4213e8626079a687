/** What a window of another width has drawn anew, and where. */
import { expect, test } from 'vitest';
import { breaksRows, eraseAbove, redrawing } from '../../../cli/chat/redraw.ts';
import { toAscii } from '../../../cli/say/ascii.ts';
import type { Token } from '../../../cli/say/tokens.ts';

const claim: Token = { t: 'claim', text: 'Yes.' };
const note: Token = { t: 'detail', text: 'x'.repeat(70) };
const picture: Token = {
  t: 'picture',
  drawings: [['#'.repeat(100)], ['#'.repeat(80)], ['#'.repeat(60)]],
  says: 'Weight rises.',
};
const told = (tokens: readonly Token[], width: number) => ({
  lines: [{ t: 'told', id: 0, tokens, width } as const],
});
const inFull = { breaks: true, asShown: (text: string) => text };
const tall = { columns: 60, rows: 40 };

test('an answer with a picture that another width draws otherwise takes its own place, broken rows counted', () => {
  // Claim 1, note 2, picture 2 with its sentence 1, and the gap below.
  const tokens = [claim, note, picture];
  expect(redrawing(told(tokens, 80), tall, inFull)).toEqual({ tokens, rows: 7 });
  expect(redrawing(told(tokens, 80), { columns: 120, rows: 40 }, inFull)).toEqual({ tokens, rows: 5 });
});

test('where the answer is taller than the window, what stands from the picture on takes its place', () => {
  const tokens = [...Array<Token>(30).fill(claim), picture, note];
  expect(redrawing(told(tokens, 80), { columns: 60, rows: 12 }, inFull)).toEqual({
    tokens: [picture, note],
    rows: 6,
  });
});

test('where broken rows cannot be told from cut ones, the pictures alone are drawn again, and nothing is taken away', () => {
  const cuts = { ...inFull, breaks: false };
  expect(redrawing(told([claim, note, picture], 80), tall, cuts)).toEqual({ tokens: [picture], rows: 0 });
  // Made wider, no row can have been broken.
  expect(redrawing(told([claim, picture], 60), { columns: 80, rows: 40 }, cuts)?.rows).toBe(4);
});

test('nothing is drawn without a picture, for one that stays the same, or once something was said since', () => {
  expect(redrawing(told([claim, note], 80), tall, inFull)).toBeNull();
  expect(redrawing(told([claim, picture], 80), { columns: 95, rows: 40 }, inFull)).toBeNull();
  const { lines } = told([claim, picture], 80);
  expect(redrawing({ lines: [...lines, { t: 'said', id: 1, words: 'why' }] }, tall, inFull)).toBeNull();
});

test('rows are counted as they are shown: in ASCII a sign may take more columns', () => {
  const half: Token = { t: 'detail', text: `${'x'.repeat(58)}½` };
  const rows = (asShown: (text: string) => string) =>
    redrawing(told([half, picture], 80), tall, { breaks: true, asShown })?.rows;
  expect([rows((text) => text), rows(toAscii)]).toEqual([5, 6]);
});

test.each([
  [{ TERM: 'tmux-256color', TMUX: '/tmp/tmux-0/default,1,0' }, true],
  [{ TERM: 'screen', TMUX: '/tmp/tmux-0/default,1,0', STY: '1.pts' }, true],
  [{ TERM: 'screen-256color', STY: '1.pts', VTE_VERSION: '7200' }, false],
  [{ TERM: 'xterm-256color', VTE_VERSION: '7200' }, true],
  [{ TERM: 'xterm-256color', TERM_PROGRAM: 'Apple_Terminal' }, true],
  [{ TERM: 'xterm-kitty' }, true],
  [{ TERM: 'xterm-256color' }, false],
  [{ TERM: 'linux' }, false],
  [{}, false],
])('of a terminal with %j it is known: %s', (env, known) => {
  expect(breaksRows(env)).toBe(known);
});

test('rows are taken away upwards, and none where there are none', () => {
  expect([eraseAbove(3), eraseAbove(0)]).toEqual(['\x1b[3A\x1b[J', '']);
});
