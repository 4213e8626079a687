/** Every fact needs its words, and words must belong to a fact: the engine itself never talks. */
import type { Problem } from '../../problem.ts';
import { nearest } from '../nearest.ts';
import type { RulebookCheck } from './index.ts';

export const factWords: RulebookCheck = ({ book, documents }, { facts }) => {
  const ids = facts.map((fact) => fact.id);
  const orphans = Object.keys(book.facts)
    .filter((id) => !ids.includes(id))
    .flatMap((id): Problem[] => {
      const suggestion = nearest(id, ids);
      const problem = documents.get(`words:${id}`)?.problemAtKey([id], 'words-without-fact', {
        found: id,
        ...(suggestion === undefined ? {} : { suggestion }),
      });
      return problem === undefined ? [] : [problem];
    });
  const wordless = ids
    .filter((id) => book.facts[id] === undefined)
    .map(
      (id): Problem => ({
        code: 'fact-without-words',
        at: { file: 'facts', line: 1, column: 1 },
        raw: '',
        data: { fact: id },
        grave: true,
        touches: ['rules'],
      }),
    );
  return [...orphans, ...wordless];
};
