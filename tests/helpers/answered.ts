/** A question answered over a plain state with the shipped rules. */
import { answer } from '../../engine/ask/ask.ts';
import { allFacts } from '../../engine/facts/index.ts';
import type { Answer, State, Supposition } from '../../engine/types.ts';
import { bookForTests } from './work-out.ts';

/** The answer for the named groups, or for those that the question concerns. */
export const answered = (
  state: State,
  question: string,
  groups: readonly string[] = [],
  on = state.on,
  supposing: readonly Supposition[] = [],
): Promise<Answer> =>
  answer(
    { book: bookForTests, facts: allFacts, state, problems: [] },
    { question, groups, moment: { on, asOf: null, lines: null }, until: null, supposing },
  );
