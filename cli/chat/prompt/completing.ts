/** Tab at the line being typed: what it may go on with, and one after the other of it. Pure. */
import type { Editor } from './line-edits.ts';

/** All ways to go on with what stands before the cursor, each with it included, best first. */
export type Complete = (before: string) => readonly string[];

/** What Tab has found, until another key is pressed. */
export interface Tab {
  readonly choices: readonly string[];
  /** The choice that stands in the line; null while only what they share does. */
  readonly place: number | null;
  /** What stood behind the cursor. */
  readonly after: string;
}

/** The part that all choices begin with, capitals aside. */
const shared = (choices: readonly string[]): string => {
  const [first = '', ...others] = choices;
  const isShared = (length: number): boolean =>
    others.every((each) => each.slice(0, length).toLowerCase() === first.slice(0, length).toLowerCase());
  let length = first.length;
  while (length > 0 && !isShared(length)) length -= 1;
  return first.slice(0, length);
};

/** Where the next choice is, in a ring. */
const step = ({ choices, place }: Tab, to: 'next' | 'before'): number => {
  const from = place ?? (to === 'next' ? -1 : 0);
  return (from + (to === 'next' ? 1 : -1) + choices.length) % choices.length;
};

/**
 * What Tab does: puts in what all ways to go on share; pressed again, one way after the other.
 * @param put makes the editor with a text before and behind the cursor
 */
export const complete = (
  editor: Editor,
  to: 'next' | 'before',
  ways: Complete,
  put: (before: string, after: string) => Editor,
): Editor => {
  const { tab, line, at } = editor;
  if (tab !== null && tab.choices.length > 1) {
    const place = step(tab, to);
    return { ...put(tab.choices[place] ?? '', tab.after), tab: { ...tab, place } };
  }
  const before = line.slice(0, at).join('');
  const after = line.slice(at).join('');
  const choices = ways(before);
  const start = shared(choices);
  const text = start.length > before.trimStart().length ? start : before;
  return { ...put(text, after), tab: { choices, place: null, after } };
};

/** The choices as they are listed: without the words that all of them begin with, and from the one behind the line's on. */
export const listChoices = ({ choices, place }: Tab): readonly string[] => {
  const start = shared(choices);
  const words = choices.length > 1 ? start.slice(0, start.lastIndexOf(' ') + 1).length : 0;
  const from = place === null ? 0 : place + 1;
  return [...choices.slice(from), ...choices.slice(0, from)].map((each) => each.slice(words));
};
