/** What a line says beside its topic, under the names that scripts read: count, group, on, amount, unit, size, weights and the like. */

import { type Line, wordsUnder } from './find/all.ts';
import { findHorizon } from './find/horizon.ts';
import type { Topic } from './lexicon.ts';
import { spansOf } from './spans.ts';
import type { Slot } from './types.ts';

const lowWords = new Set(['low', 'lows', 'night', 'nights', 'tonight', 'minimum', 'overnight', 'minima']);

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
  const numbers = spansOf(line.spans, 'number');
  const whole = numbers.find((span) => Number.isInteger(span.value));
  if (whole !== undefined) {
    if (family === 'about') slots.n = whole.value;
    else slots.count = whole.value;
  }
  const heat = spansOf(line.spans, 'quantity').find((span) => span.dimension === 'temperature');
  const isLow = line.tokens.some((token) => lowWords.has(token.word));
  if (heat !== undefined) slots[isLow ? 'low' : 'high'] = heat.value;
  const amount = spansOf(line.spans, 'quantity').find((span) =>
    ['mass', 'volume', 'bags', 'length', 'ratio'].includes(span.dimension),
  );
  if (amount !== undefined) {
    slots.amount = amount.value;
    slots.unit = amount.unit;
  }
  if (family === 'tell') Object.assign(slots, toldSlots(line));
  return slots;
};
