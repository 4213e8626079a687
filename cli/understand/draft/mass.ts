/** How much something weighs: in units, in bags and scoops, or as a bare number in the place's own unit. */
import { andPartAt } from '../find/number.ts';
import type { NumberSpan } from '../spans.ts';
import { stemOf } from '../stem.ts';
import { packsIn } from './packs.ts';
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

/** `a bag`, `the last sack`, `another full scoop` are one. */
const oneWords = new Set(['a', 'an', 'another', 'last', 'whole', 'full', 'one']);
const fullWords = new Set(['whole', 'full', 'heaped', 'level', 'good']);

const alone = (told: Told): { id: string; kg: number; stated: boolean } | null => {
  const { tokens } = told.line;
  for (const [at, token] of tokens.entries()) {
    if (!oneWords.has(token.word)) continue;
    const next = tokens[at + 1]?.word ?? '';
    const stem = tokens[fullWords.has(next) ? at + 2 : at + 1]?.stem ?? '';
    const id = stem === 'sack' ? 'bag' : stem;
    const found = told.about.measures[id];
    if (found !== undefined) return { id, ...found };
  }
  return null;
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

/** A unit that the article counts: `a stone of pellets`, `a kilo and a half`. */
const oneUnit = (told: Told): Mass | null => {
  const { tokens } = told.line;
  const { list } = told.about.book.units;
  for (const [at, token] of tokens.entries()) {
    if (!['a', 'an', 'another'].includes(token.word)) continue;
    const said = tokens[at + 1]?.word ?? '';
    const unit = list.find((each) => each.dimension === 'mass' && each.words.includes(said));
    if (unit === undefined || said.length < 2) continue;
    const part = andPartAt(tokens, at + 2);
    return { amount: written(1 + (part?.value ?? 0), unit.id), assumed: [] };
  }
  return null;
};

/** `a bag and a half`. */
const partBehind = (told: Told, id: string): number => {
  const { tokens } = told.line;
  const at = tokens.findIndex(({ stem }) => stem === id || (id === 'bag' && stem === 'sack'));
  return at < 0 ? 0 : (andPartAt(tokens, at + 1)?.value ?? 0);
};

/** The one mass a line tells. */
export const readMass = (told: Told): Mass => {
  const packs = packsIn(told);
  if (packs !== null)
    return { amount: written(packs.count * packs.size.value, packs.size.unit), assumed: [] };
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
  const one = oneUnit(told);
  if (one !== null) return one;
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
  return one === null ? null : { value: 1 + partBehind(told, one.id), ...one };
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
