/** Looking for a line that was sent before, by a part of it. Pure. */
import { clean } from '../../say/clean.ts';
import { type Editor, graphemes, put } from './line-edits.ts';
import type { Act } from './prompt-state.ts';

/** A search under way; `place` is that of the line found, null where none holds the words. */
export interface Search {
  readonly words: string;
  readonly place: number | null;
}

const findFrom = (past: readonly string[], words: string, from: number, by: 1 | -1): number | null => {
  for (let place = from; place >= 0 && place < past.length; place += by) {
    if (past[place]?.toLowerCase().includes(words.toLowerCase())) return place;
  }
  return null;
};

/** A search for these words, from the newest line back. */
export const searchFor = (past: readonly string[], words: string): Search => ({
  words,
  place: findFrom(past, words, past.length - 1, -1),
});

/** The next line with the same words; the one found stays where there is no other. */
const searchOn = (past: readonly string[], search: Search, to: 'older' | 'newer'): Search => {
  if (search.place === null) return search;
  const by = to === 'older' ? -1 : 1;
  return { ...search, place: findFrom(past, search.words, search.place + by, by) ?? search.place };
};

/** The line found is put in, to be read before it is sent. */
export const takeFound = (editor: Editor, { place }: Search): Editor => {
  const draft = editor.place === editor.past.length ? editor.line.join('') : editor.draft;
  const free = { ...editor, draft, search: null };
  return place === null ? free : { ...put(free)(free.past[place] ?? '', ''), place };
};

/** A key while a line is looked for; null for one that ends the looking and is then taken as ever. */
export const takeInSearch = (editor: Editor, search: Search, act: Act): Editor | null => {
  const { past } = editor;
  const look = (next: Search): Editor => ({ ...editor, search: next });
  switch (act.t) {
    case 'insert':
      return look(searchFor(past, search.words + clean(act.text)));
    case 'delete':
      return look(searchFor(past, graphemes(search.words).slice(0, -1).join('')));
    case 'search':
      return look(searchOn(past, search, 'older'));
    case 'recall':
      return look(searchOn(past, search, act.to));
    case 'submit':
    case 'complete':
      return takeFound(editor, search);
    case 'let-be':
    case 'interrupt':
    case 'finish':
      return { ...editor, search: null };
    default:
      return null;
  }
};
