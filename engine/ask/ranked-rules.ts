/** The rules of a question in the order of their rank, which is the same for as long as they are: ranked once for many looks. */
import { byRank } from '../reason/choose.ts';
import type { Rule, Rulebook } from '../types.ts';

/** The rules of a question, highest-ranking first. */
export type Ranked = (book: Rulebook, question: string) => readonly Rule[];

/** Its id is where a rule's question can be read off, so that no other rule has to be read from the compiled book. */
export const rankedRules: Ranked = ({ rules }, question) =>
  byRank(Object.keys(rules).flatMap((id) => (id.startsWith(`${question}/`) ? (rules[id] ?? []) : [])));

/** Ranks the rules of each question once; a book in which only figures differ has the same rules. */
export const rememberRanks = (): Ranked => {
  const known = new WeakMap<Rulebook['rules'], Map<string, readonly Rule[]>>();
  return (book, question) => {
    const ofRules = known.get(book.rules) ?? new Map<string, readonly Rule[]>();
    known.set(book.rules, ofRules);
    const ranked = ofRules.get(question) ?? rankedRules(book, question);
    ofRules.set(question, ranked);
    return ranked;
  };
};
