import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Editor, openEditor } from '../../../../cli/chat/prompt/line-edits.ts';
import { type Act, takeAct } from '../../../../cli/chat/prompt/prompt-state.ts';

const insert = (text: string): Act => ({ t: 'insert', text });
const withActs = (editor: Editor, ...acts: readonly Act[]): Editor =>
  acts.reduce((each, act) => takeAct(each, act).editor, editor);
/** The line with `|` where the cursor stands. */
const shown = ({ line, at }: Editor): string => `${line.slice(0, at).join('')}|${line.slice(at).join('')}`;
const typed = (...acts: readonly Act[]): string => shown(withActs(openEditor([]), ...acts));

describe('moving', () => {
  test.each([
    ['left', 'two words|', 'two word|s'],
    ['right', '|two', 't|wo'],
    ['right', 'two|', 'two|'],
    ['left', '|two', '|two'],
    ['start', 'two words|', '|two words'],
    ['end', '|two words', 'two words|'],
    ['word-left', 'two  words|', 'two  |words'],
    ['word-left', 'two  |words', '|two  words'],
    ['word-left', '|two', '|two'],
    ['word-right', '|two  words', 'two|  words'],
    ['word-right', 'two|  words', 'two  words|'],
    ['word-right', 'two|', 'two|'],
  ] as const)('%s from %s', (to, from, expected) => {
    const [before = '', rest = ''] = from.split('|');
    const start: Editor = { ...openEditor([]), line: [...before, ...rest], at: before.length };
    expect(shown(withActs(start, { t: 'move', to }))).toBe(expected);
  });
});

describe('deleting', () => {
  test.each([
    ['left', 'two| words', 'tw| words'],
    ['right', 'two| words', 'two|words'],
    ['word-left', 'two wo|rds', 'two |rds'],
    ['word-right', 'two| words', 'two|'],
    ['start', 'two| words', '| words'],
    ['end', 'two| words', 'two|'],
    ['left', '|two', '|two'],
    ['right', 'two|', 'two|'],
  ] as const)('%s from %s', (to, from, expected) => {
    const [before = '', rest = ''] = from.split('|');
    const start: Editor = { ...openEditor([]), line: [...before, ...rest], at: before.length };
    expect(shown(withActs(start, { t: 'delete', to }))).toBe(expected);
  });

  test('takes one character as the keeper sees it, however many codes it has', () => {
    expect(typed(insert('a👩‍🌾'), { t: 'delete', to: 'left' })).toBe('a|');
  });
});

describe('inserting', () => {
  test('goes in at the cursor', () => {
    expect(typed(insert('hw'), { t: 'move', to: 'left' }, insert('o'))).toBe('ho|w');
  });

  test('joins an accent to the letter before it', () => {
    const editor = withActs(openEditor([]), insert('e'), insert('\u0301'));
    expect(editor).toEqual({ ...openEditor([]), line: ['e\u0301'], at: 1 });
  });

  test('drops controls and makes line ends spaces', () => {
    expect(typed(insert('a\nb\x07\x1b[31mc'))).toBe('a bc|');
  });
});

describe('recalling', () => {
  const history = ['first', 'second'];

  test('goes through older lines and back to the unsent draft', () => {
    const older: Act = { t: 'recall', to: 'older' };
    const newer: Act = { t: 'recall', to: 'newer' };
    const draft = withActs(openEditor(history), insert('draft'));
    const stops = [[older], [older, older], [older, older, older], [older, older, newer], [older, newer]];
    expect(stops.map((acts) => shown(withActs(draft, ...acts)))).toEqual([
      'second|',
      'first|',
      'first|',
      'second|',
      'draft|',
    ]);
  });

  test('goes no further than the draft', () => {
    expect(shown(withActs(openEditor(history), insert('draft'), { t: 'recall', to: 'newer' }))).toBe(
      'draft|',
    );
  });

  test('shows an older line without its controls', () => {
    expect(shown(withActs(openEditor(['a\x1b[2Jb']), { t: 'recall', to: 'older' }))).toBe('ab|');
  });
});

describe('sending', () => {
  test('hands on the trimmed words, clears the line and remembers it', () => {
    const sent = takeAct(withActs(openEditor(['old']), insert('  new words ')), { t: 'submit' });
    expect(sent).toEqual({
      editor: openEditor(['old', 'new words']),
      submitted: 'new words',
      leaves: false,
    });
  });

  test('remembers a line sent twice in a row once', () => {
    expect(takeAct(withActs(openEditor(['same']), insert('same')), { t: 'submit' }).editor.past).toEqual([
      'same',
    ]);
  });

  test('sends no words from a blank line', () => {
    const sent = takeAct(withActs(openEditor([]), insert('  ')), { t: 'submit' });
    expect(sent).toEqual({ editor: openEditor([]), submitted: '', leaves: false });
  });
});

describe('leaving', () => {
  test.each([
    ['interrupt', '', true, '|'],
    ['interrupt', 'words', false, '|'],
    ['finish', '', true, '|'],
    ['finish', 'words', false, 'words|'],
    ['hang-up', 'words', true, 'words|'],
  ] as const)('%s on "%s"', (t, words, leaves, line) => {
    const sent = takeAct(withActs(openEditor([]), insert(words)), { t });
    expect([sent.leaves, shown(sent.editor)]).toEqual([leaves, line]);
  });
});

test('whatever is typed, the cursor stays in a line of clean whole characters', () => {
  const to = fc.constantFrom('left', 'right', 'word-left', 'word-right', 'start', 'end');
  const act: fc.Arbitrary<Act> = fc.oneof(
    fc.record({ t: fc.constant('insert'), text: fc.string({ unit: 'binary' }) }),
    fc.record({ t: fc.constant('move'), to }),
    fc.record({ t: fc.constant('delete'), to }),
    fc.record({ t: fc.constant('recall'), to: fc.constantFrom('older', 'newer') }),
    fc.record({ t: fc.constant('complete'), to: fc.constantFrom('next', 'before') }),
    fc.record({ t: fc.constantFrom('submit', 'interrupt', 'finish', 'search', 'let-be') }),
  );
  fc.assert(
    fc.property(fc.array(act, { maxLength: 15 }), fc.array(fc.string(), { maxLength: 3 }), (acts, past) => {
      const ways = (): readonly string[] => past;
      const editor = acts.reduce((each, next) => takeAct(each, next, ways).editor, openEditor(past));
      expect(editor.at).toBeGreaterThanOrEqual(0);
      expect(editor.at).toBeLessThanOrEqual(editor.line.length);
      expect(editor.line.join('')).not.toMatch(/[\p{Cc}\p{Bidi_Control}\p{Surrogate}]/u);
    }),
  );
});
