/** What a line says beside its topic, under the names that scripts read: count, group, on, amount, unit, size, weights and the like. */

import { type Line, wordsUnder } from './find/all.ts';
import { findBatchSize } from './find/batch-size.ts';
import { findCounted } from './find/counted.ts';
import { findDegrees } from './find/degrees.ts';
import { findHorizon } from './find/horizon.ts';
import { findHousehold, type Household } from './find/household.ts';
import { findMonth } from './find/month.ts';
import { findStrip } from './find/strip.ts';
import type { Topic } from './lexicon.ts';
import { isOverlapping, type NumberSpan, spansOf } from './spans.ts';
import type { Slot } from './types.ts';

const groundWords = new Set(
  'ground field paddock pasture grass lawn meadow acre acres hectare hectares plot'.split(' '),
);

/** An area named by its sides or outright, with its unit where one was said. */
const areaIn = (line: Line): Readonly<Record<string, Slot>> => {
  const [size] = spansOf(line.spans, 'size');
  if (size !== undefined) {
    const unit = size.unit === null ? {} : { unit: `${size.unit}2` };
    return { area: size.sides[0] * size.sides[1], ...unit };
  }
  const area = spansOf(line.spans, 'quantity').find((span) => span.dimension === 'area');
  return area === undefined ? {} : { area: area.value, unit: area.unit };
};

/** The same under the name of the ground, where the words speak of ground. */
const groundIn = (line: Line): Readonly<Record<string, Slot>> => {
  const { area } = areaIn(line);
  return area !== undefined && line.tokens.some((token) => groundWords.has(token.word))
    ? { ground: area }
    : {};
};

/** How many birds and how much gear a question speaks of. */
const countsIn = (line: Line, numbers: readonly NumberSpan[]): Readonly<Record<string, Slot>> => {
  const { birds, gear, count } = findCounted(line.tokens, numbers, spansOf(line.spans, 'group'));
  return { ...gear, ...(birds === null ? {} : { birds }), ...(count === null ? {} : { count }) };
};

/** Weights and volumes of a question under their own names, each with its unit, since it may speak of both. */
const measuresIn = (line: Line): Readonly<Record<string, Slot>> => {
  const slots: Record<string, Slot> = {};
  for (const dimension of ['mass', 'volume']) {
    const found = spansOf(line.spans, 'quantity').find((span) => span.dimension === dimension);
    if (found === undefined) continue;
    slots[dimension] = found.value;
    slots[`${dimension}-unit`] = found.unit;
  }
  return slots;
};

/** What a question says of the people who eat, of batches, and of a month without a day. */
const householdIn = (line: Line, { eaters, birdsAWeek }: Household): Readonly<Record<string, Slot>> => {
  const month = spansOf(line.spans, 'day').length > 0 ? null : findMonth(line.tokens);
  const each = findBatchSize(line.tokens);
  return {
    ...(eaters === undefined ? {} : { eaters }),
    ...(birdsAWeek === undefined ? {} : { 'birds-a-week': birdsAWeek }),
    ...(month === null ? {} : { month }),
    ...(each === null ? {} : { 'batch-size': each }),
  };
};

/** Slots that only a record has: weights, and the terms of its kind. */
const toldSlots = (line: Line): Readonly<Record<string, Slot>> => {
  const slots: Record<string, Slot> = {};
  const weights = [
    ...spansOf(line.spans, 'number'),
    ...spansOf(line.spans, 'quantity').filter((span) => span.dimension === 'mass'),
  ].sort((one, other) => one.from - other.from);
  if (weights.length > 1) slots.weights = weights.map((span) => span.value);
  for (const list of ['cause', 'sign', 'setting'] as const) {
    const term = spansOf(line.spans, 'term').find((span) => span.list === list);
    if (term !== undefined) slots[list === 'setting' ? 'what' : list] = term.id;
  }
  return slots;
};

/** The slots of a line; texts stand as typed, numbers as numbers. */
export const readSlots = (
  words: string,
  line: Line,
  family: Topic['family'],
): Readonly<Record<string, Slot>> => {
  const under = (span: { from: number; to: number }): string =>
    wordsUnder(words, line.tokens, span.from, span.to);
  const slots: Record<string, Slot> = {};
  const days = spansOf(line.spans, 'day');
  const [group] = spansOf(line.spans, 'group');
  if (group !== undefined) slots.group = under(group);
  const day = days.find((span) => span.role === 'on') ?? days[0];
  if (day !== undefined) slots.on = under(day);
  const [time] = spansOf(line.spans, 'time');
  if (time !== undefined && family === 'ask') {
    slots.at = time.at;
    const isOne = day !== undefined && day.from >= time.to && day.from - time.to <= 1;
    if (day === undefined || isOne) slots.on = under({ from: time.from, to: day?.to ?? time.to });
  }
  const horizon = findHorizon(line.tokens);
  const stretch = spansOf(line.spans, 'stretch')[0];
  if (horizon !== null) slots.horizon = horizon;
  else if (stretch !== undefined) slots.horizon = under(stretch);
  const [size] = spansOf(line.spans, 'size');
  if (size !== undefined) slots.size = under(size);
  const [age] = spansOf(line.spans, 'age');
  if (age !== undefined) slots.age = age.days;
  const [money] = spansOf(line.spans, 'money');
  if (money !== undefined) slots.price = under(money);
  const degrees = findDegrees(line);
  const { low, high, humidity } = degrees;
  if (low !== undefined) slots.low = low;
  if (high !== undefined) slots.high = high;
  if (humidity !== undefined) slots.humidity = humidity;
  const speed = spansOf(line.spans, 'quantity').find((span) => span.dimension === 'speed');
  if (speed !== undefined) slots.wind = speed.value;
  const home = findHousehold(line.tokens);
  const numbers = spansOf(line.spans, 'number')
    .filter((span) => !degrees.taken.includes(span) && span.value >= 0)
    .filter((span) => family !== 'ask' || !home.spans.some((taken) => isOverlapping(taken, span)));
  const whole = numbers.find((span) => Number.isInteger(span.value));
  if (family === 'ask') Object.assign(slots, countsIn(line, numbers), householdIn(line, home));
  else if (whole !== undefined) slots[family === 'about' ? 'n' : 'count'] = whole.value;
  const amount = spansOf(line.spans, 'quantity').find((span) =>
    ['mass', 'volume', 'bags', 'length', 'ratio'].includes(span.dimension),
  );
  if (amount !== undefined && (humidity === undefined || amount.dimension !== 'ratio')) {
    slots.amount = amount.value;
    slots.unit = amount.unit;
  } else {
    const unit = degrees.unit ?? speed?.unit;
    if (unit !== undefined) slots.unit = unit;
  }
  const strip = findStrip(line.tokens);
  if (strip !== null) slots.strip = strip;
  if (family === 'tell') Object.assign(slots, toldSlots(line));
  else Object.assign(slots, areaIn(line), groundIn(line), measuresIn(line));
  return slots;
};
