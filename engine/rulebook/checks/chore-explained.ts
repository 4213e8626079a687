/** A chore of the daily round may be done by somebody new to it: it must say how it looks when it went right, and when to ring. */
import type { Problem } from '../../problem.ts';
import type { RulebookCheck } from './index.ts';

const keys = [
  ['right-when', 'rightWhen'],
  ['ring-when', 'ringWhen'],
] as const;

export const choreExplained: RulebookCheck = ({ book, documents }) => {
  const daily = new Set(Object.values(book.questions).flatMap((question) => question.gathers));
  return Object.values(book.rules)
    .filter((rule) => rule.chore !== null && daily.has(rule.question))
    .flatMap((rule) =>
      keys
        .filter(([, key]) => rule.chore?.[key] === null)
        .flatMap(([wants]): Problem[] => {
          const problem = documents
            .get(`rule:${rule.id}`)
            ?.problemAt(['chore'], 'chore-not-explained', { rule: rule.id, wants });
          return problem === undefined ? [] : [problem];
        }),
    );
};
