/** How much something weighs: in units, in bags and scoops, or as a bare number in the place's own unit. */
import type { NumberSpan } from '../spans.ts';
import { stemOf } from '../stem.ts';
import { decimal, numbers, quantities, type Told, terms, under, written } from './told.ts';

export interface Mass {
  /** As the ledger has it, `25 lb`; null when it cannot be told. */
  readonly amount: string | null;
  readonly assumed: readonly string[];
}

/** The place's own unit of mass, and kilograms in one of it. */
export const ownUnit = (told: Told): { id: string; kg: number } => {
  const { units } = told.about.book;
  const id = units.shown.mass?.[told.about.system] ?? 'kg';
  return { id, kg: units.list.find((unit) => unit.id === id)?.factor ?? 1 };
};

const inOwnUnit = (told: Told, kg: number): string => {
  const unit = ownUnit(told);
  return written(Math.round((kg / unit.kg) * 100) / 100, unit.id);
};

/** A count of household measures, as in `half a bag` or `8 scoops`; `kg` is null when nobody has said what one holds. */
const measured = (told: Told): { value: number; id: string; kg: number | null; stated: boolean } | null => {
  const bags = quantities(told, 'bags')[0];
  const measure = told.about.measures;
  if (bags !== undefined)
    return { value: bags.value, id: 'bag', kg: measure.bag?.kg ?? null, stated: measure.bag?.stated ?? true };
  for (const number of numbers(told)) {
    const skip = ['a', 'of'].includes(told.line.tokens[number.to]?.word ?? '') ? 1 : 0;
    const stem = told.line.tokens[number.to + skip]?.stem;
    const id = ['scoop', 'bucket', ...Object.keys(measure)].find((each) => stemOf(each) === stem);
    if (id !== undefined)
      return { value: number.value, id, kg: measure[id]?.kg ?? null, stated: measure[id]?.stated ?? true };
  }
  return null;
};

const alone = (told: Told): { id: string; kg: number; stated: boolean } | null => {
  const at = told.line.tokens.findIndex(
    (token, n) =>
      token.word === 'a' && told.about.measures[told.line.tokens[n + 1]?.stem ?? ''] !== undefined,
  );
  const id = told.line.tokens[at + 1]?.stem ?? '';
  const found = at < 0 ? undefined : told.about.measures[id];
  return found === undefined ? null : { id, ...found };
};

const bareNumber = (told: Told): NumberSpan | null => {
  const free = numbers(told).filter((span) => {
    const next = told.line.tokens[span.to]?.word ?? '';
    return (
      span.value > 0 &&
      !terms(told, 'setting').some((term) => term.from === span.to) &&
      !['of', 'am', 'pm', '%'].includes(next)
    );
  });
  return free.length === 1 ? (free[0] ?? null) : null;
};

/** The one mass a line tells. */
export const readMass = (told: Told): Mass => {
  const mass = quantities(told, 'mass')[0];
  const measure = measured(told) ?? (mass === undefined ? aloneAsOne(told) : null);
  if (measure !== null && mass === undefined) {
    if (measure.kg === null) return { amount: null, assumed: [] };
    const amount = inOwnUnit(told, measure.value * measure.kg);
    return {
      amount,
      assumed: measure.stated ? [] : [`taking a ${measure.id} as ${inOwnUnit(told, measure.kg)}`],
    };
  }
  if (mass !== undefined) return { amount: written(mass.value, mass.unit), assumed: [] };
  const bare = bareNumber(told);
  if (bare === null) return { amount: null, assumed: [] };
  const unit = ownUnit(told);
  return {
    amount: written(bare.value, unit.id),
    assumed: [`taking ${under(told, bare)} as ${decimal(bare.value)} ${unit.id}`],
  };
};

const aloneAsOne = (told: Told): ReturnType<typeof measured> => {
  const one = alone(told);
  return one === null ? null : { value: 1, ...one };
};

/** The unit of mass a line names anywhere, as in `weights in grams`. */
const namedUnit = (told: Told): string | null => {
  const { list } = told.about.book.units;
  for (const token of told.line.tokens) {
    const unit = list.find(
      (each) => each.dimension === 'mass' && token.word.length > 1 && each.words.includes(token.word),
    );
    if (unit !== undefined) return unit.id;
  }
  return null;
};

/** Single weights of a line in its order, all in one unit, without the numbers at `except`. */
export const readWeights = (
  told: Told,
  except: readonly NumberSpan[],
): { weights: readonly string[]; assumed: readonly string[] } => {
  const masses = quantities(told, 'mass');
  const bare = numbers(told).filter((span) => span.value > 0 && !except.includes(span));
  const named = masses[0]?.unit ?? namedUnit(told);
  const unit = named ?? ownUnit(told).id;
  const all = [
    ...masses.map((span) => ({ at: span.from, text: written(span.value, span.unit) })),
    ...bare.map((span) => ({ at: span.from, text: written(span.value, unit) })),
  ].sort((one, other) => one.at - other.at);
  const assumed = named === null && bare.length > 0 ? [`taking the weights in ${unit}`] : [];
  return { weights: all.map((each) => each.text), assumed };
};
