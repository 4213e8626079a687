/** The line being typed: pure steps over graphemes, with the lines sent before at hand. */
import { type Complete, complete } from './completing.ts';
import { type Editor, insert, openEditor, put, type Reach, reach, recall, remove } from './line-edits.ts';
import { searchFor, takeFound, takeInSearch } from './searching.ts';

/** What one key asks for. */
export type Act =
  | { readonly t: 'insert'; readonly text: string }
  | { readonly t: 'move'; readonly to: Reach }
  | { readonly t: 'delete'; readonly to: Reach }
  | { readonly t: 'recall'; readonly to: 'older' | 'newer' }
  /** Tab, or Shift-Tab for the one before. */
  | { readonly t: 'complete'; readonly to: 'next' | 'before' }
  /** Ctrl-R: looks for a line sent before; again: an older one. */
  | { readonly t: 'search' }
  /** Esc: what was begun with Tab or Ctrl-R is let be. */
  | { readonly t: 'let-be' }
  | { readonly t: 'submit' }
  /** Ctrl-C: clears a line, leaves on an empty one. */
  | { readonly t: 'interrupt' }
  /** Ctrl-D: deletes to the right, leaves on an empty line. */
  | { readonly t: 'finish' }
  /** The terminal is gone. */
  | { readonly t: 'hang-up' };

/** An editor after a key; `submitted` are the words sent, empty for an empty line; `leaves` asks to end the chat. */
export interface Taken {
  readonly editor: Editor;
  readonly submitted: string | null;
  readonly leaves: boolean;
}

const submit = (editor: Editor): Taken => {
  const words = editor.line.join('').trim();
  if (words === '') return { editor: openEditor(editor.past), submitted: '', leaves: false };
  const past = editor.past.at(-1) === words ? editor.past : [...editor.past, words];
  return { editor: openEditor(past), submitted: words, leaves: false };
};

/** Nothing is known to go on with. */
const noWays: Complete = () => [];

/** One key taken: the line after it, the words sent if any, and whether the keeper leaves. `ways` are those that Tab offers. */
export const takeAct = (untouched: Editor, act: Act, ways: Complete = noWays): Taken => {
  const before = { ...untouched, isUntouched: false };
  const searched = before.search === null ? null : takeInSearch(before, before.search, act);
  if (searched !== null) return { editor: searched, submitted: null, leaves: false };
  const found = before.search === null ? before : takeFound(before, before.search);
  const editor = act.t === 'complete' ? found : { ...found, tab: null };
  const stay = (next: Editor): Taken => ({ editor: next, submitted: null, leaves: false });
  const leave: Taken = { editor, submitted: null, leaves: true };
  const isEmpty = editor.line.length === 0;
  switch (act.t) {
    case 'insert':
      return stay(insert(editor, act.text));
    case 'move':
      return stay({ ...editor, at: reach(editor, act.to) });
    case 'delete':
      return stay(remove(editor, act.to));
    case 'recall':
      return stay(recall(editor, act.to));
    case 'complete':
      return stay(complete(editor, act.to, ways, put(editor)));
    case 'search':
      return stay({ ...editor, search: searchFor(editor.past, '') });
    case 'let-be':
      return stay(editor);
    case 'submit':
      return submit(editor);
    case 'interrupt':
      return isEmpty ? leave : stay(openEditor(editor.past));
    case 'finish':
      return isEmpty ? leave : stay(remove(editor, 'right'));
    case 'hang-up':
      return leave;
  }
};
