/** Birds weighed, from words: single weights, or a mean of so many. */
import type { NumberSpan } from '../spans.ts';
import { pickGroup } from './group.ts';
import { ownUnit } from './mass.ts';
import { type Build, known, lacking, numbers, quantities, says, type Told, written } from './told.ts';

const birdWords = new Set([
  'bird',
  'chick',
  'chicken',
  'of',
  'white',
  'red',
  'them',
  'head',
  'hd',
  'rooster',
  'cockerel',
  'cock',
  'hen',
  'pullet',
  'big',
  'small',
  'piece',
]);

const totals = [
  'in all',
  'total',
  'altogether',
  'all together',
  'together',
  'all told',
  'combined',
  'in sum',
  'all in',
  'aggregate',
  'net',
  'less the',
  'without the',
  'without crate',
  'minus the',
  'minus sack',
  'take off',
  'taken off',
  'birds only',
];
/** What birds are weighed in, all at once. */
const holders = 'crate crates bucket bag sack tub basket pail box tote'.split(' ');
const means = 'average averaged averaging averages mean apiece each'.split(' ');

/** A weight as it stands in the words; `unit` is null for a bare number. */
interface Weight {
  readonly from: number;
  readonly to: number;
  readonly value: number;
  readonly unit: string | null;
}

const massesIn = (told: Told): readonly Weight[] => quantities(told, 'mass');
const isWhole = (span: Weight | NumberSpan): boolean => Number.isInteger(span.value) && span.value >= 1;

/** Whether two weights are of one flock: a bare number beside stated weights is one of them only if it is like them. */
const isLike = (value: number, others: readonly Weight[]): boolean => {
  const spread = 3;
  return others.some((other) => value > other.value / spread && value < other.value * spread);
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

/** The number that says how many were weighed, if one does: next to birds, before a colon, or as many as follow it. */
const headCount = (told: Told, masses: readonly Weight[], bare: readonly NumberSpan[]): NumberSpan | null => {
  const { tokens, spans } = told.line;
  const whole = bare.filter(isWhole);
  const isNamed = (span: NumberSpan): boolean => {
    const next = tokens[span.to];
    const isBird = next !== undefined && (next.word === ':' || birdWords.has(next.stem));
    const before = tokens[span.from - 1]?.word ?? '';
    const isLed = ['of', 'did', 'n', 'and', 'sample'].includes(before) || tokens[span.from - 1]?.word === '=';
    const isGroup = spans.some(
      (other) => other.kind === 'group' && other.from >= span.to && other.from <= span.to + 2,
    );
    return isBird || isGroup || (isLed && (masses.length > 0 || says(told, ...means)));
  };
  const named = whole.find(isNamed);
  if (named !== undefined) return named;
  if (masses.length > 0) {
    const [opening] = whole.filter(
      ({ from, value }) => from < (masses[0]?.from ?? 0) && value === masses.length,
    );
    if (opening !== undefined) return opening;
    const others = whole.filter((span) => !isLike(span.value, masses));
    return (
      others.find((span) => span.value === masses.length) ??
      (masses.length === 1 ? (others[0] ?? null) : null)
    );
  }
  const counts = whole.find((span) => span.value > 1 && span.value === bare.length - 1);
  if (counts !== undefined) return counts;
  // Weights are told to a part of a unit: the only whole number beside them is how many.
  const parts = bare.filter((span) => !isWhole(span));
  return parts.length > 0 && whole.length === 1 && says(told, ...means) ? (whole[0] ?? null) : null;
};

/** The weights of a line in its order, all in one unit where none was said with them. */
const weightsIn = (
  told: Told,
  masses: readonly Weight[],
  bare: readonly NumberSpan[],
  head: NumberSpan | null,
): { readonly weights: readonly Weight[]; readonly unit: string; readonly assumed: readonly string[] } => {
  const named = masses[0]?.unit ?? namedUnit(told);
  const unit = named ?? ownUnit(told).id;
  // "one" stands for a bird, and weighs nothing
  const isOne = ({ from, value }: NumberSpan): boolean =>
    value === 1 && told.line.tokens[from]?.word === 'one';
  const free = bare.filter((span) => span !== head && span.value > 0 && !isOne(span));
  const like = masses.length === 0 ? free : free.filter((span) => isLike(span.value, masses));
  const parts = masses.length > 0 ? [] : like.filter((span) => !isWhole(span));
  // "4.4 4.1 4.6 and one that got away": beside weights in parts a whole number unlike them is none
  const alike =
    parts.length > 1 ? like.filter((span) => !isWhole(span) || isLike(span.value, asWeights(parts))) : like;
  const weights = [...masses, ...asWeights(alike)].sort((one, other) => one.from - other.from);
  return {
    weights,
    unit,
    assumed: named === null && weights.length > 0 ? [`taking the weights in ${unit}`] : [],
  };
};

const asWeights = (spans: readonly NumberSpan[]): readonly Weight[] =>
  spans.map(({ from, to, value }) => ({ from, to, value, unit: null }));

const text = (weight: Weight, unit: string): string => written(weight.value, weight.unit ?? unit);

/** What all of them weigh together, shared out among them: the ledger holds a mean. */
const shareOut = (
  total: Weight,
  unit: string,
  heads: number,
): { mean: string; assumed: readonly string[] } => {
  const mean = written(Math.round((total.value / heads) * 1000) / 1000, total.unit ?? unit);
  return { mean, assumed: [`taking ${text(total, unit)} over ${heads} birds as ${mean} each`] };
};

/** The one weight that is meant where several are told: the net one, or that nearest behind the word for a mean. */
const chosen = (told: Told, weights: readonly Weight[], words: readonly string[]): Weight | undefined => {
  const { tokens } = told.line;
  const at = tokens.findIndex((token) => words.includes(token.word));
  const behind = weights.find(({ from }) => from > at);
  const before = weights.filter(({ to }) => to <= at).at(-1);
  const isClose = before !== undefined && at - before.to <= 1;
  return at < 0 ? undefined : isClose ? before : (behind ?? before);
};

export const buildWeigh: Build = (told) => {
  const picked = pickGroup(told, () => true);
  const masses = massesIn(told);
  const bare = numbers(told).filter(
    (span) => !masses.some((mass) => mass.from <= span.from && span.to <= mass.to),
  );
  const head = headCount(told, masses, bare);
  const { weights, unit, assumed } = weightsIn(told, masses, bare, head);
  const heads = head?.value ?? null;
  const isOfMany = heads === null || heads > 1;
  const mean = says(told, ...means) && isOfMany ? (chosen(told, weights, means) ?? weights[0]) : undefined;
  const isTotal = says(told, ...totals) || holders.some((word) => says(told, word));
  const total =
    mean === undefined &&
    heads !== null &&
    heads > 1 &&
    (weights.length === 1 || says(told, 'net')) &&
    isTotal
      ? (chosen(told, weights, ['net']) ?? weights[0])
      : undefined;
  if (total !== undefined && heads !== null) {
    const shared = shareOut(total, unit, heads);
    const fields = { group: picked.group, mean: shared.mean, count: heads };
    return {
      fields: known(fields),
      missing: lacking(fields, 'group'),
      assumed: [...picked.assumed, ...assumed, ...shared.assumed],
    };
  }
  // One weight of several birds is neither theirs nor plainly their sum.
  const isUnclear = mean === undefined && heads !== null && heads > 1 && weights.length === 1;
  const fields = {
    group: picked.group,
    weights:
      mean !== undefined || isUnclear || weights.length === 0
        ? null
        : weights.map((each) => text(each, unit)),
    mean: mean === undefined ? null : text(mean, unit),
    count: mean === undefined ? null : heads,
  };
  const nothing = mean === undefined && (isUnclear || weights.length === 0) ? ['weights'] : [];
  return {
    fields: known(fields),
    missing: [
      ...lacking(fields, 'group'),
      ...nothing,
      ...(mean !== undefined && heads === null ? ['count'] : []),
    ],
    assumed: [...picked.assumed, ...assumed],
  };
};
