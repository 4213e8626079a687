/** Turns whose long answers are folded to the window, "more" opening what the last one hid. */
import type { Told, Turn } from './conversation.ts';
import { foldTokens, opensFold } from './fold.ts';
import type { Window } from './window-size.ts';

/** A turn that folds; it remembers what is folded until the next line. `windowNow` is asked at each answer. */
export const foldLong = (turn: Turn, windowNow: () => Window, isHeard: boolean): Turn => {
  let hidden: Told['tokens'] = [];
  return async (words) => {
    const told = hidden.length > 0 && opensFold(words) ? { tokens: hidden } : await turn(words);
    const folded = foldTokens(told.tokens, windowNow(), isHeard);
    hidden = folded.hidden;
    return { ...told, tokens: folded.shown };
  };
};
