/** The line being typed: pure steps over graphemes, with the lines sent before at hand. */
import { clean } from '../../say/clean.ts';

export type Reach = 'left' | 'right' | 'word-left' | 'word-right' | 'start' | 'end';

/** What one key asks for. */
export type Act =
  | { readonly t: 'insert'; readonly text: string }
  | { readonly t: 'move'; readonly to: Reach }
  | { readonly t: 'delete'; readonly to: Reach }
  | { readonly t: 'recall'; readonly to: 'older' | 'newer' }
  | { readonly t: 'submit' }
  /** Ctrl-C: clears a line, leaves on an empty one. */
  | { readonly t: 'interrupt' }
  /** Ctrl-D: deletes to the right, leaves on an empty line. */
  | { readonly t: 'finish' }
  /** The terminal is gone. */
  | { readonly t: 'hang-up' };

export interface Editor {
  /** Graphemes, so that one key deletes what the keeper sees as one character. */
  readonly line: readonly string[];
  /** The cursor stands before this grapheme. */
  readonly at: number;
  /** Lines sent before, oldest first. */
  readonly past: readonly string[];
  /** Which of them is shown; `past.length` is the keeper's own draft. */
  readonly place: number;
  /** The unsent line, kept while older ones are looked at. */
  readonly draft: string;
}

/** An editor after a key; `submitted` are the words sent, `leaves` asks to end the chat. */
export interface Taken {
  readonly editor: Editor;
  readonly submitted: string | null;
  readonly leaves: boolean;
}

/** Made once: making one costs more than a thousand uses. It holds no state. */
const segmenter = new Intl.Segmenter();

const graphemes = (text: string): readonly string[] =>
  Array.from(segmenter.segment(text), (each) => each.segment);

/** An empty line with the lines of earlier days to recall, oldest first. */
export const openEditor = (past: readonly string[]): Editor => ({
  line: [],
  at: 0,
  past,
  place: past.length,
  draft: '',
});

const isSpace = (grapheme: string | undefined): boolean => grapheme !== undefined && /^\s/.test(grapheme);

const reach = ({ line, at }: Editor, to: Reach): number => {
  let place = at;
  switch (to) {
    case 'left':
      return Math.max(0, at - 1);
    case 'right':
      return Math.min(line.length, at + 1);
    case 'start':
      return 0;
    case 'end':
      return line.length;
    case 'word-left':
      while (isSpace(line[place - 1])) place -= 1;
      while (place > 0 && !isSpace(line[place - 1])) place -= 1;
      return place;
    case 'word-right':
      while (isSpace(line[place])) place += 1;
      while (place < line.length && !isSpace(line[place])) place += 1;
      return place;
  }
};

/** The line is cut into graphemes anew, because a typed accent can join the letter before it. */
const insert = (editor: Editor, text: string): Editor => {
  const before = editor.line.slice(0, editor.at).join('') + clean(text);
  const line = graphemes(before + editor.line.slice(editor.at).join(''));
  let at = 0;
  for (let length = 0; at < line.length && length < before.length; at += 1) length += line[at]?.length ?? 0;
  return { ...editor, line, at };
};

const remove = (editor: Editor, to: Reach): Editor => {
  const other = reach(editor, to);
  const from = Math.min(editor.at, other);
  const line = [...editor.line.slice(0, from), ...editor.line.slice(Math.max(editor.at, other))];
  return { ...editor, line, at: from };
};

const recall = (editor: Editor, to: 'older' | 'newer'): Editor => {
  const place = editor.place + (to === 'older' ? -1 : 1);
  if (place < 0 || place > editor.past.length) return editor;
  const draft = editor.place === editor.past.length ? editor.line.join('') : editor.draft;
  const line = graphemes(clean(editor.past[place] ?? draft));
  return { ...editor, line, at: line.length, place, draft };
};

const submit = (editor: Editor): Taken => {
  const words = editor.line.join('').trim();
  if (words === '') return { editor: openEditor(editor.past), submitted: null, leaves: false };
  const past = editor.past.at(-1) === words ? editor.past : [...editor.past, words];
  return { editor: openEditor(past), submitted: words, leaves: false };
};

/** One key taken: the line after it, the words sent if any, and whether the keeper leaves. */
export const takeAct = (editor: Editor, act: Act): Taken => {
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
