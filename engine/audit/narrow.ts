/** A list that gathers other questions, cut down to those whose tasks are looked at. */
import type { Rulebook } from '../types.ts';

/**
 * The rulebook in which a gathering question asks only the questions of these rules, and those to whose tasks they give way.
 * For any other question it is the same rulebook.
 */
export const narrowTo = (book: Rulebook, question: string, rules: readonly string[]): Rulebook => {
  const asked = book.questions[question];
  if (asked === undefined || asked.gathers.length === 0) return book;
  const ways = rules.flatMap((rule) => [rule, ...(book.rules[rule]?.chore?.givesWayTo ?? [])]);
  const needed = new Set(ways.map((rule) => book.rules[rule]?.question));
  const gathers = asked.gathers.filter((each) => needed.has(each));
  // A list that gathers nothing would be answered by rules of its own.
  if (gathers.length === 0) return book;
  return { ...book, questions: { ...book.questions, [question]: { ...asked, gathers } } };
};
