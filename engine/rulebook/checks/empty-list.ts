/** An empty `all` or `any` would always hold in the rule engine, so it is refused. */
import type { Problem } from '../../problem.ts';
import type { Condition } from '../../types.ts';
import { isLeaf } from '../conditions.ts';
import type { Path } from '../document.ts';
import type { RulebookCheck } from './index.ts';

const emptyIn = (condition: Condition, path: Path): Path[] => {
  if (isLeaf(condition)) return [];
  if ('not' in condition) return emptyIn(condition.not, [...path, 'not']);
  const [key, list] =
    'all' in condition ? (['all', condition.all] as const) : (['any', condition.any] as const);
  return list.length === 0
    ? [[...path, key]]
    : list.flatMap((each, index) => emptyIn(each, [...path, key, index]));
};

export const emptyList: RulebookCheck = ({ book, documents }) =>
  Object.values(book.rules).flatMap((rule) =>
    emptyIn(rule.when, ['when']).flatMap((path): Problem[] => {
      const problem = documents
        .get(`rule:${rule.id}`)
        ?.problemAt(path, 'empty-list', { list: String(path.at(-1)) });
      return problem === undefined ? [] : [problem];
    }),
  );
