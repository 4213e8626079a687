/** Whether a line plainly asks for rules or figures: by a name that is in the book, by a number of the last answer, or for a list. */
import { namedIn } from '../say/rule-source.ts';
import { readingOf } from '../understand/reading-of.ts';
import type { Heard } from '../understand/types.ts';
import type { Flock } from './flock.ts';
import type { Memory } from './reply.ts';

/** Words that may stand around a name without making it anything else than asked for. */
const around =
  /^(?:the|a|an|show|me|list|give|open|what|whats|is|are|where|does|do|come|comes|from|who|says|said|source|of|for|behind|rule|figure|about|tell|see|look|at|please|and|in|full|explain)$/;

/** How lists and numbered rules are asked for. */
const asksFor: readonly { readonly pattern: RegExp; readonly needsAnswer: boolean }[] = [
  {
    pattern:
      /^(?:show|see|open)?\s*(?:me\s+)?(?:the\s+)?(?:rule|reason|source|figure)s?\s+(?:of\s+|for\s+|behind\s+)?(?:number\s+|reason\s+|no\.?\s*)?#?\d{1,3}$/i,
    needsAnswer: true,
  },
  {
    pattern:
      /^(?:please\s+)?(?:show|list|see|give|tell|find|search|what are|which are|are there|have we|do we have)\b.*\b(?:rules|figures)\b/i,
    needsAnswer: false,
  },
  {
    pattern:
      /^(?:all\s+|my\s+|our\s+|the\s+|own\s+)*(?:rules|figures)(?:\s+(?:about|on|for|of|behind|that)\b.*)?$/i,
    needsAnswer: false,
  },
];

const isOnlyNamed = (flock: Flock, words: string): boolean => {
  const { rules, figures } = namedIn(flock.book, words);
  const names = [...rules, ...figures].map(({ id }) => id);
  const rest = names.reduce((text, id) => text.replace(id, ' '), words.toLowerCase());
  return names.length > 0 && rest.split(/[^a-z0-9]+/).every((word) => word === '' || around.test(word));
};

/** The line as heard, where it plainly asks for rules or figures; null for everything else. */
export const askedOfBook = (flock: Flock, words: string, memory: Memory): Heard | null => {
  // What was asked back comes first: a name may answer it.
  if (memory.asking !== null) return null;
  const said = words.trim().replace(/[?!.]+$/, '');
  const isAsked = asksFor.some(
    ({ pattern, needsAnswer }) => pattern.test(said) && (!needsAnswer || memory.answer !== null),
  );
  if (!isAsked && !isOnlyNamed(flock, said)) return null;
  const reading = readingOf('rule-source', 'asks for rules or figures by name', said);
  return { words, readings: [reading], sure: true, nearest: [] };
};
