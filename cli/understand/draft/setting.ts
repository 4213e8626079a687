/** A setting of the place, from words: which one, and its value read by its own dimension. */
import { nameDay } from '../find/calendar.ts';
import { spansOf, type TermSpan } from '../spans.ts';
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

const sizeIn = (told: Told): Value => {
  const size = spansOf(told.line.spans, 'size')[0];
  if (size === undefined) return none;
  const unit = size.unit ?? (told.about.system === 'us' ? 'ft' : 'm');
  const [length, width] = size.sides.map(decimal);
  const assumed = size.unit === null ? [`taking ${length} by ${width} in ${unit}`] : [];
  return { value: `${length} ${unit} x ${width} ${unit}`, assumed };
};

const quantityIn = (told: Told, dimension: string): Value => {
  const stated = quantities(told, dimension)[0];
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

const moneyIn = (told: Told): Value => {
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
  const rest = told.line.tokens
    .slice(term.to)
    .filter((token) => !token.isMark && !['is', 'are', 'in', 'to', 'at', 'called'].includes(token.word));
  const first = rest[0];
  const last = rest.at(-1);
  return first === undefined || last === undefined
    ? none
    : { value: told.words.slice(first.start, last.end), assumed: [] };
};

const countIn = (told: Told): Value => {
  const bare = numbers(told).find((span) => Number.isInteger(span.value));
  return bare === undefined ? none : { value: String(bare.value), assumed: [] };
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
  area: (told) => (sizeIn(told).value === null ? quantityIn(told, 'area') : sizeIn(told)),
  money: moneyIn,
  text: textIn,
  count: countIn,
  day: dayIn,
  clock: clockIn,
  'yes-no': (told) => ({
    value: says(told, 'no', 'not', 'without', 'open', 'nothing', 'never', 'by hand') ? 'no' : 'yes',
    assumed: [],
  }),
};

const readAs = (told: Told, term: TermSpan): Value => {
  const dimension = told.about.book.words.settings[term.id]?.dimension ?? 'text';
  return readers[dimension]?.(told, term) ?? quantityIn(told, dimension);
};

/** Whether a value was said outright in the setting's own dimension, and not only as a bare number. */
const isOutright = (told: Told, term: TermSpan): boolean => {
  const dimension = told.about.book.words.settings[term.id]?.dimension ?? 'text';
  if (dimension === 'size' || dimension === 'area')
    return spansOf(told.line.spans, 'size').length > 0 || quantities(told, 'area').length > 0;
  if (dimension === 'money') return spansOf(told.line.spans, 'money').length > 0;
  if (dimension === 'day' || dimension === 'clock')
    return spansOf(told.line.spans, dimension === 'day' ? 'day' : 'time').length > 0;
  return dimension === 'count' ? numbers(told).length > 0 : quantities(told, dimension).length > 0;
};

/** The setting that fits the value said: outright first, then right behind the number, then any value, then the longest words. */
const chooseTerm = (told: Told): TermSpan | null => {
  const rank = (term: TermSpan): number =>
    (isOutright(told, term) ? 100 : 0) +
    (numbers(told).some((number) => number.to === term.from) ? 20 : 0) +
    (readAs(told, term).value === null ? 0 : 10) +
    (term.to - term.from);
  return (
    [...terms(told, 'setting')].sort((one, other) => rank(other) - rank(one) || one.from - other.from)[0] ??
    null
  );
};

export const buildSetting: Build = (told) => {
  const term = chooseTerm(told);
  const read = term === null ? none : readAs(told, term);
  const fields = { what: term?.id ?? null, value: read.value };
  const dimension = told.about.book.words.settings[term?.id ?? '']?.dimension;
  return {
    fields: known(fields),
    missing: lacking(fields, 'what', 'value'),
    assumed: read.assumed,
    keepsDay: dimension === 'day',
  };
};
