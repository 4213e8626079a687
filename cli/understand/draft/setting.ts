/** A setting of the place, from words: which one, and its value read by its own dimension. */
import { nameDay } from '../find/calendar.ts';
import { currencyNamed } from '../find/currency.ts';
import {
  type NumberSpan,
  type QuantitySpan,
  type SizeSpan,
  type Span,
  spansOf,
  type TermSpan,
} from '../spans.ts';
import { householdIn } from './household.ts';
import { ownUnit } from './mass.ts';
import {
  type Build,
  decimal,
  known,
  lacking,
  moneyText,
  numbers,
  quantities,
  says,
  type Told,
  terms,
  under,
  written,
} from './told.ts';

interface Value {
  readonly value: string | null;
  readonly assumed: readonly string[];
}

const none: Value = { value: null, assumed: [] };

/** How many tokens lie between two stretches. */
const gapOf = (one: { from: number; to: number }, other: { from: number; to: number }): number =>
  Math.max(0, one.from - other.to, other.from - one.to);

/** The one of several spans that stands nearest to a setting's words. */
const nearest = <S extends Span>(spans: readonly S[], term: TermSpan): S | undefined =>
  spans.toSorted((one, other) => gapOf(one, term) - gapOf(other, term))[0];

const sizeOf = (told: Told, { sides, unit: said }: SizeSpan): Value => {
  const unit = said ?? (told.about.system === 'us' ? 'ft' : 'm');
  const [length, width] = sides.map(decimal);
  const assumed = said === null ? [`taking ${length} by ${width} in ${unit}`] : [];
  return { value: `${length} ${unit} x ${width} ${unit}`, assumed };
};

const sizeIn = (told: Told, term: TermSpan): Value => {
  const size = nearest(spansOf(told.line.spans, 'size'), term);
  return size === undefined ? none : sizeOf(told, size);
};

/** The size or the area that stands nearest to the words: `pen 10 by 12, pasture 1 acre`. */
const areaSpan = (told: Told, term: TermSpan): SizeSpan | QuantitySpan | undefined =>
  nearest<SizeSpan | QuantitySpan>([...spansOf(told.line.spans, 'size'), ...quantities(told, 'area')], term);

const areaIn = (told: Told, term: TermSpan): Value => {
  const span = areaSpan(told, term);
  return span?.kind === 'size' ? sizeOf(told, span) : quantityIn(told, 'area', term);
};

/** The quantity that stands nearest to a setting's words: `a 14 cu ft freezer with 9 cu ft free`. */
const nearestQuantity = (told: Told, dimension: string, term: TermSpan): QuantitySpan | undefined =>
  nearest(quantities(told, dimension), term);

const quantityIn = (told: Told, dimension: string, term: TermSpan): Value => {
  const stated = nearestQuantity(told, dimension, term);
  if (stated !== undefined) return { value: written(stated.value, stated.unit), assumed: [] };
  const bare = numbers(told)[0];
  const unit =
    dimension === 'mass' ? ownUnit(told).id : told.about.book.units.shown[dimension]?.[told.about.system];
  if (bare === undefined || unit === undefined) return none;
  const shown = told.about.book.units.list.find((each) => each.id === unit)?.one.trim() ?? unit;
  return {
    value: written(bare.value, unit),
    assumed: [`taking ${decimal(bare.value)} as ${decimal(bare.value)} ${shown}`],
  };
};

const smallCoins = new Set(['c', 'cent', 'cents', 'p', 'pence']);

const moneyIn = (told: Told): Value => {
  const coins = numbers(told).find(({ to }) => smallCoins.has(told.line.tokens[to]?.word ?? ''));
  if (coins !== undefined) return { value: moneyText(Math.round(coins.value)), assumed: [] };
  const money = spansOf(told.line.spans, 'money')[0];
  const bare = numbers(told)[0];
  const cents = money?.cents ?? (bare === undefined ? null : Math.round(bare.value * 100));
  return cents === null ? none : { value: moneyText(cents), assumed: [] };
};

const textIn = (told: Told, term: TermSpan): Value => {
  if (term.id === 'units-system') {
    const system = says(told, 'metric', 'kilos', 'kg', 'celsius')
      ? 'metric'
      : says(told, 'us', 'imperial', 'american', 'pounds', 'fahrenheit')
        ? 'us'
        : null;
    return { value: system, assumed: [] };
  }
  const own = term.id === 'currency' ? currencyNamed(told.line.tokens.map(({ word }) => word)) : undefined;
  if (own !== undefined) return { value: own, assumed: [] };
  const rest = told.line.tokens
    .slice(term.to)
    .filter((token) => !token.isMark && !['is', 'are', 'in', 'to', 'at', 'called'].includes(token.word));
  const first = rest[0];
  const last = rest.at(-1);
  return first === undefined || last === undefined
    ? none
    : { value: told.words.slice(first.start, last.end), assumed: [] };
};

/** The count right before the setting's words, or else the first: `2 lamps of 250 watts`. */
const countOf = (told: Told, term: TermSpan): NumberSpan | undefined => {
  const home = householdIn(told).find((each) => each.term.id === term.id);
  if (home !== undefined) return home.said;
  const whole = numbers(told).filter((span) => Number.isInteger(span.value));
  return whole.find((span) => span.to === term.from) ?? whole[0];
};

const countIn = (told: Told, term: TermSpan): Value => {
  const bare = countOf(told, term);
  return bare === undefined ? none : { value: decimal(bare.value), assumed: [] };
};

const dayIn = (told: Told): Value => {
  const day = spansOf(told.line.spans, 'day')[0];
  return day === undefined
    ? none
    : {
        value: day.future,
        assumed: day.plain ? [] : [`taking ${under(told, day)} as ${nameDay(day.future)}`],
      };
};

const clockIn = (told: Told): Value => ({
  value: spansOf(told.line.spans, 'time')[0]?.at ?? null,
  assumed: [],
});

const readers: Readonly<Record<string, (told: Told, term: TermSpan) => Value>> = {
  size: sizeIn,
  area: areaIn,
  money: moneyIn,
  text: textIn,
  count: countIn,
  pace: countIn,
  day: dayIn,
  clock: clockIn,
  'yes-no': (told) => ({
    value: says(told, 'no', 'not', 'without', 'open', 'nothing', 'never', 'by hand') ? 'no' : 'yes',
    assumed: [],
  }),
};

const readAs = (told: Told, term: TermSpan): Value => {
  const dimension = told.about.book.words.settings[term.id]?.dimension ?? 'text';
  return readers[dimension]?.(told, term) ?? quantityIn(told, dimension, term);
};

/** The value said outright in the setting's own dimension, and not only as a bare number. */
const outright = (told: Told, term: TermSpan): Span | undefined => {
  const dimension = told.about.book.words.settings[term.id]?.dimension ?? 'text';
  const { spans } = told.line;
  if (dimension === 'area') return areaSpan(told, term);
  if (dimension === 'size') return nearest(spansOf(spans, 'size'), term);
  if (dimension === 'money') return spansOf(spans, 'money')[0];
  if (dimension === 'day') return spansOf(spans, 'day')[0];
  if (dimension === 'clock') return spansOf(spans, 'time')[0];
  return ['count', 'pace'].includes(dimension) ? countOf(told, term) : nearestQuantity(told, dimension, term);
};

/** The setting that fits the value said: outright first, then right behind the number, then any value, then the longest words. */
const rankTerms = (told: Told): readonly TermSpan[] => {
  const rank = (term: TermSpan): number =>
    (outright(told, term) === undefined ? 0 : 100) +
    (numbers(told).some((number) => number.to === term.from) ? 20 : 0) +
    (readAs(told, term).value === null ? 0 : 10) +
    (term.to - term.from);
  const home = householdIn(told).map((each) => each.term);
  const others = terms(told, 'setting').filter(({ id }) => home.every((each) => each.id !== id));
  return [...home, ...others].sort((one, other) => rank(other) - rank(one) || one.from - other.from);
};

interface Chosen {
  readonly term: TermSpan;
  readonly read: Value;
}

/** Further settings, each with a value said outright that no other has taken: `two 3 gallon waterers`. */
const chooseOthers = (told: Told, first: TermSpan, ranked: readonly TermSpan[]): readonly Chosen[] => {
  const taken: (Span | undefined)[] = [outright(told, first)];
  if (taken[0] === undefined) return [];
  const chosen: Chosen[] = [];
  const ids = new Set([first.id]);
  for (const term of ranked) {
    const value = outright(told, term);
    if (ids.has(term.id) || value === undefined || taken.includes(value)) continue;
    ids.add(term.id);
    taken.push(value);
    chosen.push({ term, read: readAs(told, term) });
  }
  return chosen.filter(({ read }) => read.value !== null);
};

export const buildSetting: Build = (told) => {
  const ranked = rankTerms(told);
  const [term = null] = ranked;
  const read = term === null ? none : readAs(told, term);
  const others = term === null ? [] : chooseOthers(told, term, ranked);
  const fields = { what: term?.id ?? null, value: read.value };
  const isOfDay = ({ id }: TermSpan): boolean => told.about.book.words.settings[id]?.dimension === 'day';
  return {
    fields: known(fields),
    missing: lacking(fields, 'what', 'value'),
    assumed: [read, ...others.map((each) => each.read)].flatMap((each) => each.assumed),
    keepsDay: [...(term === null ? [] : [term]), ...others.map((each) => each.term)].some(isOfDay),
    also: others.map((each) => ({ what: each.term.id, value: each.read.value })),
  };
};
