/** A question without a rule that can decide it would only ever be silent. */
import type { Problem } from '../../problem.ts';
import { isVerdict } from '../ranking.ts';
import type { RulebookCheck } from './index.ts';

export const questionRules: RulebookCheck = ({ book, documents }) =>
  Object.values(book.questions)
    .filter((question) => question.kind !== 'about' && question.gathers.length === 0)
    .filter(
      (question) =>
        !Object.values(book.rules).some((rule) => rule.question === question.id && isVerdict(rule.gives)),
    )
    .flatMap((question): Problem[] => {
      const problem = documents
        .get(`question:${question.id}`)
        ?.problemAt(['kind'], 'question-without-rule', { question: question.id });
      return problem === undefined ? [] : [problem];
    });
