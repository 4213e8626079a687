/** Which answers rest on a figure, and which figures a rule rests on. */
import { known } from '../../engine/index.ts';
import { leavesOf, placeholdersIn, wordingsOf } from '../../engine/rulebook/conditions.ts';
import type { Figure, Rule, Rulebook } from '../../engine/types.ts';

const factsReading = (figure: string): ReadonlySet<string> =>
  new Set(known.facts.filter((fact) => fact.figures.includes(figure)).map((fact) => fact.id));

/** Ids of the questions whose rules or results read or say a figure, directly or by a fact that reads it. */
export const questionsUsing = (book: Rulebook, figure: string): readonly string[] => {
  const facts = factsReading(figure);
  const byRule = Object.values(book.rules)
    .filter(
      (rule) =>
        leavesOf(rule.when).some(
          ({ leaf }) =>
            leaf.figure === figure || facts.has(leaf.fact) || (leaf.other !== null && facts.has(leaf.other)),
        ) || wordingsOf(rule).some(({ text }) => placeholdersIn(text).includes(figure)),
    )
    .map((rule) => rule.question);
  const byResult = Object.values(book.questions)
    .filter((question) => question.results.some((each) => facts.has(each.fact)))
    .map((question) => question.id);
  return [...new Set([...byRule, ...byResult])].sort();
};

/** Figures that a rule compares or names, and those that go straight into the facts it compares. */
export const figuresUnder = (book: Rulebook, rule: Rule): readonly Figure[] => {
  const leaves = leavesOf(rule.when).map(({ leaf }) => leaf);
  const facts = new Set(leaves.flatMap(({ fact, other }) => (other === null ? [fact] : [fact, other])));
  const ids = [
    ...leaves.flatMap(({ figure }) => figure ?? []),
    ...placeholdersIn(rule.says).filter((name) => name.includes('/')),
    ...known.facts.filter(({ id }) => facts.has(id)).flatMap(({ figures }) => figures),
  ];
  return [...new Set(ids)].flatMap((id) => book.figures[id] ?? []);
};
