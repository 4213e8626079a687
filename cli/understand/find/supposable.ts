/** Which facts a value in a what-if may be meant for: by the sort of the value, and by what the line is likely to suppose. */
import type { FactWords, Figure, SupposedBy } from '../../../engine/types.ts';
import { nothing } from '../learn/spoken.ts';
import type { Sorted } from './sorts.ts';

/** What a line is likely to suppose, as learned. Kinds of change are those of `supposed-by` in rules/facts: `feed-price`, `night-low`. */
export interface LikelyKinds {
  /** How likely it is each kind, 0 to 1. */
  readonly chances: ReadonlyMap<string, number>;
  /** How much the words about a stretch of tokens speak for a kind. */
  readonly saidAbout: (kind: string, stretch: { readonly from: number; readonly to: number }) => number;
}

/** What placing values goes by. */
export interface Placing {
  readonly facts: Readonly<Record<string, FactWords>>;
  readonly likely: LikelyKinds;
  /** The facts that the question takes from the words anyway: they are meant before others of their kind. */
  readonly taken: ReadonlySet<string>;
  /** Published values, for what is supposed without one. */
  readonly figures: Readonly<Record<string, Figure>>;
  /** What a bag of this keeper's holds, in kg. */
  readonly bag: number;
}

/** A fact that a value may be meant for. */
export interface Supposable {
  readonly fact: string;
  readonly by: SupposedBy;
  readonly value: Sorted;
}

/** A kind that is hardly likely is not meant, even where nothing else takes the value: by itself, and beside the likeliest. */
const least = { alone: 0.02, beside: 0.03 };

/** The kind of change that is likeliest, but for some. */
export const likeliestKind = (
  { likely }: Pick<Placing, 'likely'>,
  but: readonly string[] = [],
): string | undefined =>
  [...likely.chances]
    .filter(([kind]) => !but.includes(kind))
    .toSorted((one, other) => other[1] - one[1])[0]?.[0];

/** Every fact that takes one of the values, the likeliest first; of several values, the one whose words speak for the kind. */
export const supposableFor = (
  { facts, likely, taken }: Placing,
  values: readonly Sorted[],
): readonly Supposable[] => {
  const nearness = (fact: string, { narrow }: SupposedBy): number => (taken.has(fact) ? 1 : narrow ? -1 : 0);
  const all = values.flatMap((value) =>
    Object.values(facts).flatMap(({ id, supposedBy }) =>
      supposedBy.flatMap((by) =>
        by.takes.includes(value.sort)
          ? [{ fact: id, by, value, chance: likely.chances.get(by.kind) ?? 0, nearness: nearness(id, by) }]
          : [],
      ),
    ),
  );
  const most = Math.max(0, ...[...likely.chances].map(([kind, chance]) => (kind === nothing ? 0 : chance)));
  return all
    .filter(({ chance }) => chance >= least.alone && chance >= most * least.beside)
    .map((each) => ({ ...each, said: likely.saidAbout(each.by.kind, each.value) }))
    .sort(
      (one, other) =>
        other.chance - one.chance ||
        other.nearness - one.nearness ||
        other.said - one.said ||
        values.indexOf(one.value) - values.indexOf(other.value) ||
        (one.fact < other.fact ? -1 : 1),
    )
    .map(({ fact, by, value }) => ({ fact, by, value }));
};
