import { expect, test } from 'vitest';
import { canChat } from '../../../cli/chat/can-chat.ts';

const terminal = { isTTY: true, columns: 80, rows: 24 };

test('a terminal with a size can chat', () => {
  expect(canChat(terminal, terminal, { TERM: 'xterm-256color', CI: 'true' })).toBe(true);
});

test.each([
  ['input from a pipe', {}, terminal, {}],
  ['output to a pipe', terminal, { columns: 80, rows: 24 }, {}],
  ['a terminal that cannot move its cursor', terminal, terminal, { TERM: 'dumb' }],
  ['a serial line without a size', terminal, { isTTY: true, columns: 0, rows: 0 }, {}],
  ['a size that is not known', terminal, { isTTY: true }, {}],
  ['a window of one row', terminal, { isTTY: true, columns: 80, rows: 1 }, {}],
])('%s cannot', (_name, stdin, stdout, env) => {
  expect(canChat(stdin, stdout, env)).toBe(false);
});
