/** What a search for changes has to know of a world: steps worth speaking of, what is fixed, and what derived facts stand on. */
import type { Workings } from '../../facts/workings.ts';
import type { Rule, Rulebook, Unit } from '../../types.ts';
import { dimensionOf, fromBase, shownUnit, toBase, unitOf } from '../../units.ts';
import type { Evaluation } from '../evaluate.ts';
import type { Trial } from '../turns.ts';
import type { Grounds } from './candidates.ts';
import { leversOf } from './levers.ts';

/** The unit a fact's values are spoken of in; undefined for what is no measure. */
const spokenIn = (book: Rulebook, fact: string, unit: string | null): Unit | undefined =>
  unit === null || unitOf(book.units, unit) === undefined
    ? undefined
    : unitOf(book.units, book.facts[fact]?.shown?.us ?? shownUnit(book.units, unit, 'us'));

/** The smallest change of a fact worth speaking of: one in the last decimal that its unit is shown with. */
const stepOf = (book: Rulebook, fact: string, unit: string | null): number => {
  const spoken = spokenIn(book, fact, unit);
  if (spoken === undefined) return 1;
  const smallest = 10 ** -spoken.decimals;
  return (
    toBase(book.units, { value: smallest, unit: spoken.id }) -
    toBase(book.units, { value: 0, unit: spoken.id })
  );
};

/** A value moved outward to the next one that its unit is shown with. */
const sayable = (
  book: Rulebook,
  fact: string,
  unit: string | null,
  value: number,
  isMore: boolean,
): number => {
  const spoken = spokenIn(book, fact, unit);
  if (spoken === undefined) return isMore ? Math.ceil(value) : Math.floor(value);
  const scale = 10 ** spoken.decimals;
  // Noise of the conversion must not push a value that can be said already on to the next one.
  const shown = Number((fromBase(book.units, value, spoken.id) * scale).toPrecision(12));
  return toBase(book.units, {
    value: (isMore ? Math.ceil(shown) : Math.floor(shown)) / scale,
    unit: spoken.id,
  });
};

/** Scales with a zero of their own, such as those of temperature, go on below it. */
const isBelowZero = (book: Rulebook, unit: string | null): boolean =>
  unit !== null &&
  unitOf(book.units, unit) !== undefined &&
  book.units.list.some(
    ({ dimension, offset }) => dimension === dimensionOf(book.units, unit) && offset !== 0,
  );

/** The grounds of one evaluation. @param workingsWith the same moment with facts supposed */
export const groundsFor = (
  book: Rulebook,
  rules: readonly Rule[],
  now: Evaluation,
  workingsWith: (trials: readonly Trial[]) => Workings,
): Grounds => {
  const step = (fact: string, unit: string | null): number => stepOf(book, fact, unit);
  const isFixed = (fact: string): boolean => book.facts[fact]?.fixed === true;
  return {
    rules,
    step,
    isFixed,
    levers: (evaluation, fact, to) =>
      // A second change is only looked for among what can be changed as it stands: levers below levers would cost too much.
      evaluation !== now
        ? []
        : leversOf(now.workings, now.group, fact, to, {
            with: (trial) => workingsWith([trial]),
            step,
            isFixed,
            sayable: (ground, value, isMore) => sayable(book, ground.fact, ground.unit, value, isMore),
            isBelowZero: (unit) => isBelowZero(book, unit),
          }),
  };
};
