/** The answer to a field that was asked for, put into the waiting draft. */

import type { Line } from './find/all.ts';
import { spansOf } from './spans.ts';
import { tell } from './tell.ts';
import type { About, Draft } from './types.ts';
import { onWhichDay } from './which-day.ts';

/** A draft with the asked field filled, or null when the line does not answer it. */
export interface Completed {
  readonly draft: Draft;
  readonly assumed: readonly string[];
}

const dayFields = new Set(['hatched', 'until']);
const textFields = new Set(['who', 'words', 'why', 'reason', 'strip', 'ration', 'at', 'figure']);
const longestAnswer = 12;
/** A name is short and counts nothing: what is longer tells something else. */
const longestName = 5;
const isName = ({ tokens, spans }: Line): boolean =>
  tokens.length <= longestName && !spans.some(({ kind }) => kind === 'number' || kind === 'quantity');

const birdIn = (line: Line): string | null => spansOf(line.spans, 'group')[0]?.bird ?? null;

/** A new group is named by what was typed, without `the`. */
const newName = (words: string): string => words.trim().replace(/^(?:the|call them|my)\s+/i, '');

const direct = (field: string, draft: Draft, words: string, line: Line): unknown => {
  if (dayFields.has(field)) {
    const [day] = spansOf(line.spans, 'day');
    return day === undefined ? null : field === 'hatched' ? day.past : day.future;
  }
  if (field === 'bird') return birdIn(line);
  if (field === 'group' && draft.kind === 'arrive') return newName(words);
  if (field === 'who' && !isName(line)) return null;
  return textFields.has(field) ? words.trim() : null;
};

/** Settings are read by their own dimension, so the setting's name is put before the value. */
const asTold = (draft: Draft, field: string, words: string, about: About): string => {
  const what = draft.kind === 'setting' && field === 'value' ? String(draft.fields.what ?? '') : '';
  const setting = about.book.words.settings[what];
  if (setting === undefined) return words;
  // Its name, where it is heard by that: other words of it may say a value themselves, as "kilos" does.
  const heardBy = setting.words.includes(setting.name) ? setting.name : (setting.words[0] ?? '');
  return `${heardBy} ${words}`;
};

/** Fills the asked field from a line. `find` runs the finders over a text. */
export const completeDraft = (
  words: string,
  about: About,
  find: (words: string) => Line,
): Completed | null => {
  const asking = about.asking;
  if (asking === null || words.trim() === '') return null;
  const { draft, field } = asking;
  const line = find(words);
  if (line.tokens.length > longestAnswer && field !== 'words') return null;
  if (field === 'on') {
    const settled = onWhichDay(draft, line, about);
    return settled === null ? null : { draft: settled, assumed: [] };
  }
  const text = asTold(draft, field, words, about);
  const told = tell(draft.kind, text, text === words ? line : find(text), { ...about, asking: null }, null);
  const own = direct(field, draft, words, line);
  const value = own ?? told?.draft.fields[field] ?? null;
  if (value === null || value === undefined) return null;
  // what else the answer says is taken along, but never over what was said before
  const extra = draft.kind === 'arrive' || own === null ? (told?.draft.fields ?? {}) : {};
  const fields = { ...extra, ...draft.fields, [field]: value };
  const missing = draft.missing.filter((name) => fields[name as keyof typeof fields] === undefined);
  return { draft: { ...draft, fields, missing }, assumed: told?.assumed ?? [] };
};
