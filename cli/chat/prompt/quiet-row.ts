/** What the quiet row under the prompt says: what Tab and Ctrl-R have found, and which keys go on. Pure. */
import { clean } from '../../say/clean.ts';
import { columnsOf } from '../../say/columns.ts';
import { listChoices, type Tab } from './completing.ts';
import type { Editor } from './line-edits.ts';
import type { Search } from './searching.ts';

/** What marks that a text goes on where there is no room for it. */
export const cutMark = (isAscii: boolean): string => (isAscii ? '...' : '…');

const cut = (text: string, width: number, mark: string): string => {
  if (columnsOf(text) <= width) return text;
  const letters = Array.from(new Intl.Segmenter().segment(text), ({ segment }) => segment);
  while (letters.length > 0 && columnsOf(letters.join('')) > width - mark.length) letters.pop();
  return letters.join('').trimEnd() + mark;
};

/** As many choices as there is room for, and how many are left over. */
const sayTab = (tab: Tab, width: number, mark: string): string => {
  const names = listChoices(tab);
  if (names.length === 0) return 'Nothing goes on like that. "help" shows what can be asked and told.';
  const say = (count: number): string => {
    const left = names.length - count;
    return `Tab: ${names.slice(0, count).join(', ')}${left === 0 ? '' : ` and ${left} more`}`;
  };
  let count = names.length;
  while (count > 1 && columnsOf(say(count)) > width) count -= 1;
  return cut(say(count), width, mark);
};

const saySearch = (past: readonly string[], { place }: Search, width: number, mark: string): string =>
  past.length === 0
    ? 'Nothing was sent before. Esc leaves.'
    : place === null
      ? 'No line sent before has that in it. Esc leaves.'
      : cut(`Enter takes it, Ctrl-R an older one, Esc none: ${clean(past[place] ?? '')}`, width, mark);

/** Shown until the first key, and again nowhere: who never reads a manual has seen them all the same. */
const keys = 'Tab: go on. Ctrl-R: what you sent before. Ctrl-D: leave.';

/** The row for an editor, null where it has nothing to say. `width` is the most columns it may take. */
export const quietRow = (editor: Editor, width: number, isAscii: boolean): string | null => {
  const { line, past, place, search, tab, isUntouched } = editor;
  const mark = cutMark(isAscii);
  if (search !== null) return saySearch(past, search, width, mark);
  if (isUntouched) return cut(keys, width, mark);
  // With one way to go on, it stands in the line already.
  if (tab !== null) return tab.choices.length === 1 ? null : sayTab(tab, width, mark);
  if (place === past.length || line.join('') !== past[place]) return null;
  return cut(`Sent before, ${past.length - place} back. Ctrl-R looks for one by its words.`, width, mark);
};
