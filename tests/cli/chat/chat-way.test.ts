import { expect, test } from 'vitest';
import { chatWay } from '../../../cli/chat/chat-way.ts';

const terminal = { isTTY: true, columns: 80, rows: 24 };

test('a terminal with a size is drawn on, even where a build machine is named', () => {
  expect(chatWay(terminal, terminal, { TERM: 'xterm-256color', CI: 'true' })).toBe('drawn');
});

test.each([
  ['input from a pipe', {}, terminal],
  ['output to a pipe', terminal, { columns: 80, rows: 24 }],
])('%s has no chat, whatever is wished for', (_name, stdin, stdout) => {
  expect(chatWay(stdin, stdout, { PENSIDE_PLAIN: 'yes' })).toBeNull();
});

test.each([
  ['a terminal that cannot move its cursor', terminal, { TERM: 'dumb' }],
  ['a serial line without a size', { isTTY: true, columns: 0, rows: 0 }, {}],
  ['a size that is not known', { isTTY: true }, {}],
  ['a window of one row', { isTTY: true, columns: 80, rows: 1 }, {}],
])('%s gets rows', (_name, stdout, env) => {
  expect(chatWay(terminal, stdout, env)).toBe('rows');
});

test.each([
  [{ PENSIDE_PLAIN: 'yes' }, 'heard'],
  [{ PENSIDE_PLAIN: '1', TERM: 'dumb' }, 'heard'],
  [{ INK_SCREEN_READER: 'true' }, 'heard'],
  [{ PENSIDE_PLAIN: 'no' }, 'drawn'],
  [{ PENSIDE_PLAIN: '' }, 'drawn'],
])('with %j it is %s', (env, way) => {
  expect(chatWay(terminal, terminal, env)).toBe(way);
});
