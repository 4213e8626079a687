/** A rule is its own test: it needs a case in which it holds, one in which it fails, and one in which it cannot be told. */
import type { Problem } from '../../problem.ts';
import type { RulebookCheck } from './index.ts';

const outcomes = ['held', 'failed', 'unknown'] as const;

export const ruleCases: RulebookCheck = ({ book, documents }) =>
  Object.values(book.rules).flatMap((rule) =>
    outcomes
      .filter((outcome) => !rule.cases.some((each) => each.expect === outcome))
      .flatMap((wants): Problem[] => {
        const problem = documents
          .get(`rule:${rule.id}`)
          ?.problemAt(['cases'], 'rule-without-case', { wants });
        return problem === undefined ? [] : [problem];
      }),
  );
