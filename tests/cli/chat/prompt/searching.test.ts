/** Ctrl-R: a line sent before is looked for by its words, read, and only then sent. */
import { expect, test } from 'vitest';
import { type Editor, openEditor } from '../../../../cli/chat/prompt/line-edits.ts';
import { type Act, takeAct } from '../../../../cli/chat/prompt/prompt-state.ts';
import { quietRow } from '../../../../cli/chat/prompt/quiet-row.ts';

const past = ['how much feed', 'lost 2 reds', 'how much water', 'why'];
const look: Act = { t: 'search' };
const submit: Act = { t: 'submit' };
const insert = (text: string): Act => ({ t: 'insert', text });
const after = (...acts: readonly Act[]): Editor =>
  acts.reduce((editor, act) => takeAct(editor, act).editor, openEditor(past));
const row = (...acts: readonly Act[]): string | null => quietRow(after(...acts), 80, false);
const found = (line: string): string => `Enter takes it, Ctrl-R an older one, Esc none: ${line}`;

test.each<[string, readonly Act[], string]>([
  ['nothing typed yet: the newest', [look], 'why'],
  ['typing narrows it', [look, insert('MUCH')], 'how much water'],
  ['again: an older one', [look, insert('much'), look], 'how much feed'],
  ['the oldest stays', [look, insert('much'), look, look], 'how much feed'],
  ['Down: a newer one', [look, insert('much'), look, { t: 'recall', to: 'newer' }], 'how much water'],
  ['deleting widens it', [look, insert('r'), insert('e'), { t: 'delete', to: 'left' }], 'how much water'],
])('%s', (_name, acts, line) => {
  expect(row(...acts)).toBe(found(line));
});

test('what no line has is said', () => {
  expect(row(look, insert('zebra'))).toBe('No line sent before has that in it. Esc leaves.');
  expect(quietRow(takeAct(openEditor([]), look).editor, 80, false)).toBe(
    'Nothing was sent before. Esc leaves.',
  );
});

test('Enter takes the line found without sending it; a second Enter sends', () => {
  const taken = takeAct(after(look, insert('lost')), submit);
  expect([taken.editor.line.join(''), taken.editor.at, taken.submitted]).toEqual(['lost 2 reds', 11, null]);
  expect(takeAct(taken.editor, submit).submitted).toBe('lost 2 reds');
});

test('a key that moves takes it and moves; Up goes on from there, and Down comes back to the draft', () => {
  const moved = after(insert('draft'), look, insert('lost'), { t: 'move', to: 'start' });
  expect([moved.line.join(''), moved.at, moved.search]).toEqual(['lost 2 reds', 0, null]);
  const older = takeAct(moved, { t: 'recall', to: 'older' }).editor;
  expect(older.line.join('')).toBe('how much feed');
  const newer: Act = { t: 'recall', to: 'newer' };
  const end = [newer, newer, newer, newer].reduce((editor, act) => takeAct(editor, act).editor, older);
  expect(end.line.join('')).toBe('draft');
});

test.each(['let-be', 'interrupt', 'finish'] as const)('%s leaves the line as it was', (t) => {
  const left = takeAct(after(insert('draft'), look, insert('lost')), { t });
  expect([left.editor.line.join(''), left.editor.search, left.leaves]).toEqual(['draft', null, false]);
});

test('older lines called up with Up say that they can be looked for', () => {
  expect(row({ t: 'recall', to: 'older' }, { t: 'recall', to: 'older' })).toBe(
    'Sent before, 2 back. Ctrl-R looks for one by its words.',
  );
});
