/** Checks of weights, prices, weather and distances. */
import { bare, type Check, inBase, unitOf } from './held.ts';
import { invented, judge } from './judged.ts';
import { isBagUnit, isNear, kilogramsOf, moneyOf, numberOf, type Slots, weightOf } from './label.ts';

export const feedAmount: Check = (held) => {
  const { slots, draft } = held;
  const amount = numberOf(slots.amount);
  if (amount === null)
    return draft.fields.amount === undefined || slots.amount !== undefined
      ? []
      : invented('amount', draft.fields.amount);
  const wanted = kilogramsOf(amount, unitOf(slots));
  // what is measured by a load or a can of their own cannot be judged
  if (wanted === null) return [];
  return judge('amount', `${amount} ${unitOf(slots) ?? ''}`, draft.fields.amount, draft.missing, (found) =>
    isNear(inBase(held, found) ?? Number.NaN, wanted),
  );
};

const each = /\beach\b|\ba\b|\bper\b|apiece|\/|\bea\b|\bthe\b|\bat\b/;

/** Sums that a label allows: a price may be that of one or of all. */
const sums = (slots: Slots): readonly number[] => {
  const total = moneyOf(slots.total);
  if (total !== null) return [total];
  const price = moneyOf(slots.price);
  if (price === null) return [];
  const many = numberOf(slots.amount) ?? numberOf(slots.count) ?? 1;
  return each.test(String(slots.price)) && !/pair|both|lot/.test(String(slots.price))
    ? [price * many]
    : [price * many, price];
};

export const priceCheck: Check = ({ slots, draft }) => {
  const wanted = sums(slots);
  const found = draft.fields.price;
  if (wanted.length === 0)
    return found === undefined || slots.total !== undefined || slots.price !== undefined
      ? []
      : invented('price', found);
  if (wanted.every((sum) => sum === 0) && found === undefined) return [];
  return judge('price', wanted[0], found, draft.missing, (price) =>
    wanted.some((sum) => Math.abs(sum - Number(price)) < 0.011),
  );
};

export const buyAmount: Check = (held) => {
  const { slots, draft } = held;
  const amount = numberOf(slots.amount) ?? numberOf(slots.count);
  if (amount === null) return [];
  const unit = unitOf(slots);
  const { bags, count } = draft.fields;
  if (isBagUnit(unit) && slots.what !== 'ice')
    return judge('bags', `${amount} bags`, bags, draft.missing, (found) => bare(found) === amount);
  const weight = unit === null ? null : kilogramsOf(amount, unit);
  if (weight !== null && !isBagUnit(unit))
    return judge('amount', `${amount} ${unit}`, draft.fields.amount, draft.missing, (found) =>
      isNear(inBase(held, found) ?? Number.NaN, weight),
    );
  if (amount === 1 || unit !== null) return [];
  return judge(
    'count',
    amount,
    count ?? (bags === undefined ? undefined : bare(bags)),
    draft.missing,
    (found) => found === amount,
  );
};

export const weightsCheck: Check = (held) => {
  const { slots, draft } = held;
  const unit = unitOf(slots);
  const label = Array.isArray(slots.weights) ? slots.weights : slots.value === undefined ? [] : [slots.value];
  const count = numberOf(slots.count);
  const { weights, mean, dressed } = draft.fields;
  const total = weightOf(slots.total ?? slots.amount, unit);
  if (draft.kind === 'process') {
    if (total === null || dressed === undefined)
      return total === null ? [] : judge('dressed', total, dressed, draft.missing, () => true);
    const all = label.map((value) => weightOf(value, unit) ?? 0).reduce((sum, value) => sum + value, 0);
    const found = inBase(held, dressed) ?? Number.NaN;
    return isNear(found, total) || isNear(found, all) || isNear(found, total * (count ?? 1))
      ? []
      : judge('dressed', total, dressed, draft.missing, () => false);
  }
  const wanted = label.map((value) => weightOf(value, unit));
  if (wanted.includes(null)) return [];
  if (wanted.length === 0) {
    if (total === null || count === null) return [];
    return judge('weights', `${total} kg of ${count}`, mean, draft.missing, (found) =>
      [total / count, total].some((mean) => isNear(inBase(held, found) ?? Number.NaN, mean)),
    );
  }
  const found = (Array.isArray(weights) ? weights : mean === undefined ? [] : [mean]).map((value) =>
    inBase(held, value),
  );
  const isSame = (): boolean =>
    (found.length === wanted.length &&
      found.every((value, at) => isNear(value ?? Number.NaN, wanted[at] ?? 0))) ||
    // All alike are told as their mean.
    (mean !== undefined && wanted.every((weight) => isNear(weight ?? 0, inBase(held, mean) ?? Number.NaN))) ||
    // Bare numbers may be of a unit that only the voice tells.
    (unit === null &&
      found.length === wanted.length &&
      (Array.isArray(weights) ? weights : [mean]).every((value, at) => bare(value) === numberOf(label[at])));
  return judge('weights', label, found.length === 0 ? undefined : (weights ?? mean), draft.missing, isSame);
};

export const meanCount: Check = ({ slots, draft }) => {
  const wanted = numberOf(slots.count);
  const isMean = draft.fields.mean !== undefined;
  return !isMean || wanted === null
    ? []
    : judge('count', wanted, draft.fields.count, draft.missing, (count) => count === wanted);
};

export const degreesCheck =
  (slot: string): Check =>
  ({ slots, draft }) => {
    const wanted = numberOf(slots[slot]);
    const found = draft.fields[slot];
    if (wanted === null)
      return found === undefined ||
        slots[slot] !== undefined ||
        numberOf(slots.value) === bare(found) ||
        (slot === 'rain' && bare(found) === 0)
        ? []
        : invented(slot, found);
    if (wanted === 0 && slot === 'rain' && found === undefined) return [];
    return judge(
      slot,
      wanted,
      found,
      draft.missing,
      (value) => bare(value) === wanted || (slot === 'rain' && isNear(bare(value), wanted * 10)),
    );
  };

export const distanceCheck: Check = (held) => {
  const { slots, draft, book } = held;
  const amount = numberOf(slots.amount);
  const unit = unitOf(slots)?.toLowerCase() ?? '';
  const of = book.units.list.find((each) => each.dimension === 'length' && each.words.includes(unit));
  const found = draft.fields.distance;
  if (amount === null || of === undefined)
    return found === undefined || amount !== null || slots.size !== undefined
      ? []
      : invented('distance', found);
  return judge('distance', `${amount} ${unit}`, found, draft.missing, (value) =>
    isNear(inBase(held, value) ?? Number.NaN, amount * of.factor),
  );
};
