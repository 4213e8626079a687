/** Which facts a value in a what-if may be meant for, by the words about it: read from `supposed-by` in rules/facts. */
import type { FactWords, SupposedBy } from '../../../engine/types.ts';
import type { Sorted } from './sorts.ts';

/** A fact that a value may be meant for, with the way of speaking that fits. A way without words fits any. */
export interface Supposable {
  readonly fact: string;
  readonly by: SupposedBy;
  readonly value: Sorted;
}

interface Fitting extends Supposable {
  readonly hits: number;
}

/** Every fact that fits, the one that more words speak for first; vague ones come after all others. */
export const supposableFor = (
  facts: Readonly<Record<string, FactWords>>,
  values: readonly Sorted[],
  said: ReadonlySet<string>,
): readonly Supposable[] => {
  const all = values.flatMap((value) =>
    Object.values(facts).flatMap(({ id, supposedBy }) =>
      supposedBy.flatMap((by): Fitting[] => {
        const hits = by.words.filter((word) => said.has(word)).length;
        const isMeant = hits > 0 || by.words.length === 0;
        return !isMeant || !by.takes.includes(value.sort) ? [] : [{ fact: id, by, value, hits }];
      }),
    ),
  );
  // What some word places is not meant for what no word names.
  const isPlaced = all.some(({ hits, by }) => hits > 0 && !by.vague);
  const isNumbered = all.some(({ hits, value }) => hits > 0 && value.sort === 'number');
  const fitting = all.filter(
    ({ hits, value }) => hits > 0 || !(isPlaced || (isNumbered && value.sort === 'number')),
  );
  const order = (one: Fitting, other: Fitting): number =>
    Number(one.by.vague) - Number(other.by.vague) ||
    values.indexOf(one.value) - values.indexOf(other.value) ||
    other.hits - one.hits ||
    (one.fact < other.fact ? -1 : 1);
  return fitting.sort(order).map(({ hits: _, ...each }) => each);
};
