/** Tab: what all ways share goes in, then one way after the other; the quiet row lists them. */
import { expect, test } from 'vitest';
import { type Editor, openEditor } from '../../../../cli/chat/prompt/line-edits.ts';
import { type Act, takeAct } from '../../../../cli/chat/prompt/prompt-state.ts';
import { quietRow } from '../../../../cli/chat/prompt/quiet-row.ts';

const lines = ['how many birds', 'how much feed', 'how much water', 'help'];
const ways = (before: string): readonly string[] =>
  lines.filter((line) => line.startsWith(before.toLowerCase()));
const tab: Act = { t: 'complete', to: 'next' };
const back: Act = { t: 'complete', to: 'before' };
const left: Act = { t: 'move', to: 'left' };
const insert = (text: string): Act => ({ t: 'insert', text });

const after = (...acts: readonly Act[]): Editor =>
  acts.reduce((editor, act) => takeAct(editor, act, ways).editor, openEditor([]));
/** The line with `|` where the cursor stands, and the quiet row. */
const shown = (...acts: readonly Act[]) => {
  const editor = after(...acts);
  const line = `${editor.line.slice(0, editor.at).join('')}|${editor.line.slice(editor.at).join('')}`;
  return [line, quietRow(editor, 60, false)];
};

test.each<[string, readonly Act[], string, string | null]>([
  ['the one way goes in whole', [insert('he'), tab], 'help|', null],
  ['what all share goes in', [insert('ho'), tab], 'how m|', 'Tab: many birds, much feed, much water'],
  ['capitals do not matter', [insert('HOW MU'), tab], 'how much |', 'Tab: feed, water'],
  [
    'again: the first of them',
    [insert('ho'), tab, tab],
    'how many birds|',
    'Tab: much feed, much water, many birds',
  ],
  [
    'again: the next',
    [insert('ho'), tab, tab, tab],
    'how much feed|',
    'Tab: much water, many birds, much feed',
  ],
  [
    'round and round',
    [insert('ho'), tab, tab, tab, tab, tab],
    'how many birds|',
    'Tab: much feed, much water, many birds',
  ],
  ['and back', [insert('ho'), tab, back], 'how much water|', 'Tab: many birds, much feed, much water'],
  ['what stands behind stays', [insert('he now'), left, left, left, left, tab], 'help| now', null],
  [
    'what nothing begins like stays',
    [insert('xyz'), tab],
    'xyz|',
    'Nothing goes on like that. "help" shows what can be asked and told.',
  ],
  ['the row goes with the next key', [insert('ho'), tab, insert('u')], 'how mu|', null],
])('%s', (_name, acts, line, row) => {
  expect(shown(...acts)).toEqual([line, row]);
});

test('the row says how many more there are, and fits', () => {
  const editor = after(insert('how'), tab);
  expect([30, 40, 60].map((width) => quietRow(editor, width, true))).toEqual([
    'Tab: many birds and 2 more',
    'Tab: many birds, much feed, much water',
    'Tab: many birds, much feed, much water',
  ]);
  expect(quietRow(editor, 18, true)).toBe('Tab: many birds...');
});
