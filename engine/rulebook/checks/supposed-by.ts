/** What a fact may be supposed by must be a sort of value that understanding finds, and one that the fact can be worth. */
import type { Problem } from '../../problem.ts';
import type { Rulebook } from '../../types.ts';
import { dimensionOf, unitOf } from '../../units.ts';
import { nearest } from '../nearest.ts';
import type { RulebookCheck } from './index.ts';

/** Sorts that are no dimension of a unit. */
const otherSorts = [
  'money',
  'age',
  'day',
  'time-of-day',
  'hour',
  'number',
  'pace',
  'people',
  'share',
  'times',
  'often',
  'size',
  'long-side',
  'short-side',
];

/** Feed is said in bags of a weight that the keeper has told. */
const isBagged = (said: string, is: string): boolean => said === 'bags' && is === 'mass';

/** A sum said for a weight is a price: `4 dollars a pound`. */
const isPriceFor = (said: string, is: string): boolean => said === 'money' && is === 'money-per-mass';

/** Whether some unit of one dimension is written like one of the other: inches of rain are inches. */
const areAlike = ({ units }: Rulebook, one: string, other: string): boolean => {
  const wordsOf = (dimension: string): readonly string[] =>
    units.list
      .filter((unit) => unit.dimension === dimension)
      .flatMap(({ words, one }) => [...words, one.trim()]);
  const words = new Set(wordsOf(one));
  return one === other || wordsOf(other).some((word) => words.has(word));
};

/** The dimension that a value of some sort must have to stand for a fact as it is; undefined where any number does. */
const dimensionFor = (sort: string, isPartOf: boolean): string | undefined => {
  if (sort === 'age') return 'time';
  if (sort === 'ratio' && isPartOf) return undefined;
  return otherSorts.includes(sort) && sort !== 'money' ? undefined : sort;
};

export const supposedBy: RulebookCheck = ({ book, documents }, { facts }) => {
  const dimensions = [...new Set(book.units.list.map((unit) => unit.dimension))];
  const sorts = [...new Set([...dimensions, ...otherSorts])].sort();
  const ids = facts.map((fact) => fact.id);
  return Object.values(book.facts).flatMap((words) =>
    words.supposedBy.flatMap((by, at): Problem[] => {
      const document = documents.get(`words:${words.id}`);
      const fact = facts.find((each) => each.id === words.id);
      if (document === undefined || fact === undefined) return [];
      const place = [words.id, 'supposed-by', at];
      const problems: Problem[] = [];
      const named = [
        ['share-of', by.shareOf],
        ['from', by.from],
      ] as const;
      for (const [key, id] of named) {
        if (id === null || ids.includes(id)) continue;
        const suggestion = nearest(id, ids);
        problems.push(
          document.problemAt([...place, key], 'unknown-fact', {
            found: id,
            ...(suggestion === undefined ? {} : { suggestion }),
          }),
        );
      }
      if (by.unsaid !== null && book.figures[by.unsaid] === undefined) {
        const suggestion = nearest(by.unsaid, Object.keys(book.figures));
        problems.push(
          document.problemAt([...place, 'unsaid'], 'unknown-figure', {
            found: by.unsaid,
            ...(suggestion === undefined ? {} : { suggestion }),
          }),
        );
      }
      by.takes.forEach((sort, index) => {
        const at = [...place, 'takes', index];
        if (!sorts.includes(sort)) {
          const suggestion = nearest(sort, sorts);
          problems.push(
            document.problemAt(at, 'unknown-sort', {
              found: sort,
              wants: sorts,
              ...(suggestion === undefined ? {} : { suggestion }),
            }),
          );
          return;
        }
        // A number of days is counted from a day.
        if (sort === 'age' && by.from !== null && fact.unit === 'date') return;
        const wants = dimensionFor(sort, by.takesAway || by.shareOf !== null);
        const is =
          fact.unit === null || unitOf(book.units, fact.unit) === undefined
            ? 'choice'
            : dimensionOf(book.units, fact.unit);
        if (
          sort === 'day'
            ? fact.unit !== 'date'
            : sort === 'time-of-day' || sort === 'hour'
              ? fact.unit !== null
              : is === 'choice' ||
                (wants !== undefined &&
                  !isPriceFor(wants, is) &&
                  !isBagged(wants, is) &&
                  !areAlike(book, wants, is))
        )
          problems.push(document.problemAt(at, 'unit-clash', { fact: fact.id, is, against: wants ?? sort }));
      });
      return problems;
    }),
  );
};
