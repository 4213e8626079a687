/** Which facts a question can rest on at all: those of its rules, wordings and results, and everything below them. */

import type { Fact } from '../facts/define.ts';
import { leavesOf, placeholdersIn, wordingsOf } from '../rulebook/conditions.ts';
import type { Question, Rule, Rulebook } from '../types.ts';

const namedIn = (rule: Rule): readonly string[] => [
  ...leavesOf(rule.when).flatMap(({ leaf }) => [leaf.fact, leaf.other ?? leaf.fact]),
  ...wordingsOf(rule).flatMap(({ text }) => placeholdersIn(text)),
  ...(rule.chore?.by == null ? [] : [rule.chore.by]),
];

const figuresOf = (rule: Rule): readonly string[] =>
  leavesOf(rule.when).flatMap(({ leaf }) => leaf.figure ?? []);

const triedBy = ({ tries }: Question): readonly string[] =>
  tries === null ? [] : [tries.days, tries.beyond, tries.kinds, tries.birds, tries.groups, tries.travel];

/** The question and all others whose rules it puts to use. */
const questionsOf = (book: Rulebook, id: string): readonly Question[] => {
  const question = book.questions[id];
  if (question === undefined) return [];
  const others = [...question.gathers, ...Object.values(question.foretells)];
  return [question, ...others.filter((other) => other !== id).flatMap((other) => questionsOf(book, other))];
};

/** Every fact that may have a part in the answers of a question; one that is not among them makes no difference to it. */
export const factsBehind = (
  book: Rulebook,
  facts: ReadonlyMap<string, Fact>,
  question: string,
): ReadonlySet<string> => {
  const found = new Set<string>();
  const visitFigure = (id: string): void => {
    for (const axis of book.figures[id]?.by ?? []) visit(axis.fact);
  };
  const visit = (id: string): void => {
    const fact = facts.get(id);
    if (fact === undefined || found.has(id)) return;
    found.add(id);
    for (const below of [...fact.needs, ...fact.wants, ...fact.each]) visit(below);
    for (const figure of fact.figures) visitFigure(figure);
  };
  for (const asked of questionsOf(book, question)) {
    const rules = Object.values(book.rules).filter((rule) => rule.question === asked.id);
    for (const id of rules.flatMap(namedIn)) visit(id);
    for (const id of rules.flatMap(figuresOf)) visitFigure(id);
    for (const { fact } of asked.results) visit(fact);
    for (const id of triedBy(asked)) visit(id);
    if (asked.concerns !== null) visit(asked.concerns.fact);
    if (asked.picture !== null) visit(`${asked.picture}-series`);
  }
  return found;
};
