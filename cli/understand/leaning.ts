/** Which turn a line may lean on: the one before, or behind records told since the question that was asked last. */
import type { Line } from './find/all.ts';
import { weighForm } from './form.ts';
import { tell } from './tell.ts';
import type { About } from './types.ts';

/** Whether a line could be one more record like the last: it asks nothing and lacks nothing that the kind wants. */
const isOneMore = (kind: string, words: string, line: Line, about: About): boolean =>
  weighForm(line) <= 0 && tell(kind, words, line, about, null)?.draft.missing.length === 0;

/**
 * What is known, with the question asked last as the turn before where that was a record and the line is none of its kind:
 * `and the reds?` after "gave the whites 12 lb" goes on with what was asked, for it says no amount.
 */
export const leaningOn = (words: string, line: Line, about: About): About => {
  const [prefix, kind] = (about.before?.readings[0]?.topic ?? '').split(':');
  if (prefix !== 'tell' || kind === undefined || about.asked == null) return about;
  return isOneMore(kind, words, line, about) ? about : { ...about, before: about.asked };
};
