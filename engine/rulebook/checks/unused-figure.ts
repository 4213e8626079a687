/** A figure that no rule and no fact uses is either forgotten or misspelt elsewhere. */
import type { Problem } from '../../problem.ts';
import { leavesOf, placeholdersIn, wordingsOf } from '../conditions.ts';
import type { RulebookCheck } from './index.ts';

export const unusedFigure: RulebookCheck = ({ book, documents }, { facts, figures }) => {
  const used = new Set<string>([...figures, ...facts.flatMap((fact) => fact.figures)]);
  for (const rule of Object.values(book.rules)) {
    for (const { leaf } of leavesOf(rule.when)) if (leaf.figure !== null) used.add(leaf.figure);
    if (rule.chore !== null && rule.chore.remind !== null) used.add(rule.chore.remind);
    for (const { text } of wordingsOf(rule)) for (const name of placeholdersIn(text)) used.add(name);
  }
  return Object.keys(book.figures)
    .filter((id) => !used.has(id))
    .flatMap((id): Problem[] => {
      const problem = documents
        .get(`figure:${id}`)
        ?.problemAt(['description'], 'unused-figure', { figure: id });
      return problem === undefined ? [] : [problem];
    });
};
