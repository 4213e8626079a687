/** A value as said in a what-if → what the engine lays over a fact or a figure, in base units. */
import { known } from '../../engine/index.ts';
import type { Rulebook, Supposition } from '../../engine/types.ts';
import { baseUnitOf, dimensionOf, shownUnit, toBase, unitOf } from '../../engine/units.ts';
import type { Supposing } from '../understand/types.ts';

type System = 'us' | 'metric';

/** A unit by its id or by a word for it, if it measures a dimension. */
export const unitSaid = (book: Rulebook, said: string | null, dimension: string): string | undefined => {
  const word = said?.toLowerCase() ?? '';
  return book.units.list.find(
    (unit) =>
      unit.dimension === dimension &&
      // Inches of rain are read as inches: shown alike, they are the same to whoever says them.
      (unit.id === said || unit.words.includes(word) || unit.one.trim().toLowerCase() === word),
  )?.id;
};

/** The unit that was said, if it measures what the fact is; else the one it is shown in here. Null for days and choices. */
const unitFor = (book: Rulebook, { unit, fact }: Supposing, of: string, system: System): string | null => {
  if (unitOf(book.units, of) === undefined) return null;
  const own = book.facts[fact ?? '']?.shown?.[system];
  return unitSaid(book, unit, dimensionOf(book.units, of)) ?? own ?? shownUnit(book.units, of, system);
};

/** A supposed number in base units; a change of temperature is a difference, not a point on the scale. */
const inBase = (book: Rulebook, supposing: Supposing, of: string | null, system: System): number | string => {
  const { value, adds } = supposing;
  if (typeof value !== 'number' || of === null) return value;
  const from = unitFor(book, supposing, of, system);
  if (from === null) return value;
  const base = toBase(book.units, { value, unit: from });
  return adds ? base - toBase(book.units, { value: 0, unit: from }) : base;
};

/** A share as a ratio, whether it was said as a part or in percent. */
const ratioOf = (book: Rulebook, { value, unit }: Supposing): number =>
  unit === null ? Number(value) : toBase(book.units, { value: Number(value), unit });

/** What the engine is to lay over; null where it has neither fact nor figure for it. */
export const toSupposition = (
  book: Rulebook,
  supposing: Supposing,
  system: System,
  now: (fact: string) => unknown = () => undefined,
): Supposition | null => {
  const { adds, group } = supposing;
  const fact = known.facts.find((each) => each.id === supposing.fact);
  if (fact !== undefined) {
    const what = { fact: fact.id };
    if (supposing.times === true) return { what, value: Number(supposing.value), adds, times: true, group };
    if (supposing.share === 'goes' && adds)
      return { what, value: -Number(inBase(book, supposing, fact.unit, system)), adds, group };
    if (supposing.share === 'goes')
      return { what, value: 1 - ratioOf(book, supposing), adds, times: true, group };
    if (supposing.share === 'is') {
      const whole = now(supposing.of ?? fact.id);
      return typeof whole === 'number'
        ? { what, value: whole * ratioOf(book, supposing), adds, group }
        : null;
    }
    return { what, value: inBase(book, supposing, fact.unit, system), adds, group };
  }
  const figure = supposing.figure === undefined ? undefined : book.figures[supposing.figure];
  if (figure === undefined) return null;
  const base = baseUnitOf(book.units, dimensionOf(book.units, figure.unit)).id;
  return { what: { figure: figure.id }, value: inBase(book, supposing, base, system), adds };
};

/** What is supposed of the coming days is supposed of the first of them too. */
const firstOf: Readonly<Record<string, string>> = {
  'night-low': 'tonight-low',
  'rain-soon': 'rain-today',
  'wind-soon': 'wind-today',
};

export const withFirstDay = (supposed: readonly Supposition[]): readonly Supposition[] => [
  ...supposed,
  ...supposed.flatMap((each): Supposition[] => {
    const first = 'fact' in each.what ? firstOf[each.what.fact] : undefined;
    const isSaid = supposed.some((other) => 'fact' in other.what && other.what.fact === first);
    return first === undefined || isSaid ? [] : [{ ...each, what: { fact: first } }];
  }),
];
