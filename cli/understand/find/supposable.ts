/** Which facts a value in a what-if may be meant for, by the words about it: read from `supposed-by` in rules/facts. */
import type { FactWords, SupposedBy } from '../../../engine/types.ts';
import type { Sorted } from './sorts.ts';

/** A fact that a value may be meant for, with the way of speaking that fits. */
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
  const fitting = values.flatMap((value) =>
    Object.values(facts).flatMap(({ id, supposedBy }) =>
      supposedBy.flatMap((by): Fitting[] => {
        const hits = by.words.filter((word) => said.has(word)).length;
        return hits === 0 || !by.takes.includes(value.sort) ? [] : [{ fact: id, by, value, hits }];
      }),
    ),
  );
  const order = (one: Fitting, other: Fitting): number =>
    Number(one.by.vague) - Number(other.by.vague) ||
    values.indexOf(one.value) - values.indexOf(other.value) ||
    other.hits - one.hits ||
    (one.fact < other.fact ? -1 : 1);
  return fitting.sort(order).map(({ hits: _, ...each }) => each);
};
