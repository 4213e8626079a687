/** The line being typed, over graphemes, and what can be done to it. Pure. */
import { clean } from '../../say/clean.ts';
import type { Tab } from './completing.ts';
import type { Search } from './searching.ts';

export type Reach = 'left' | 'right' | 'word-left' | 'word-right' | 'start' | 'end';

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
  /** What the Tab just pressed has found. */
  readonly tab: Tab | null;
  readonly search: Search | null;
  /** No key has been pressed yet. */
  readonly isUntouched: boolean;
}

/** Made once: making one costs more than a thousand uses. It holds no state. */
const segmenter = new Intl.Segmenter();

/** A text cut into what the keeper sees as characters. */
export const graphemes = (text: string): readonly string[] =>
  Array.from(segmenter.segment(text), (each) => each.segment);

/** An empty line with the lines of earlier days to recall, oldest first. */
export const openEditor = (past: readonly string[]): Editor => ({
  line: [],
  at: 0,
  past,
  place: past.length,
  draft: '',
  tab: null,
  search: null,
  isUntouched: false,
});

const isSpace = (grapheme: string | undefined): boolean => grapheme !== undefined && /^\s/.test(grapheme);

/** Where the cursor goes. */
export const reach = ({ line, at }: Editor, to: Reach): number => {
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
export const insert = (editor: Editor, text: string): Editor => {
  const before = editor.line.slice(0, editor.at).join('') + clean(text);
  const line = graphemes(before + editor.line.slice(editor.at).join(''));
  let at = 0;
  for (let length = 0; at < line.length && length < before.length; at += 1) length += line[at]?.length ?? 0;
  return { ...editor, line, at };
};

/** The line without what lies between the cursor and there. */
export const remove = (editor: Editor, to: Reach): Editor => {
  const other = reach(editor, to);
  const from = Math.min(editor.at, other);
  const line = [...editor.line.slice(0, from), ...editor.line.slice(Math.max(editor.at, other))];
  return { ...editor, line, at: from };
};

/** The line sent before or after the one that is shown; nothing where there is none. */
export const recall = (editor: Editor, to: 'older' | 'newer'): Editor => {
  const place = editor.place + (to === 'older' ? -1 : 1);
  if (place < 0 || place > editor.past.length) return editor;
  const draft = editor.place === editor.past.length ? editor.line.join('') : editor.draft;
  const line = graphemes(clean(editor.past[place] ?? draft));
  return { ...editor, line, at: line.length, place, draft };
};

/** The line with a text before and one behind the cursor. */
export const put =
  (editor: Editor) =>
  (before: string, after: string): Editor =>
    insert({ ...editor, line: graphemes(after), at: 0 }, before);
