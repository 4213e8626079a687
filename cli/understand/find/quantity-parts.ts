/** Amounts told in parts: `a stone and a half`, `4 lb 6 oz`, `an inch and a quarter`. */
import type { Unit } from '../../../engine/types.ts';
import type { NumberSpan, QuantitySpan } from '../spans.ts';
import type { Token } from '../tokens.ts';
import { andPartAt } from './number.ts';

/** `an inch and a quarter`, `pound and a half`: one of a unit and a part of it. */
export const oneAndPart = (
  tokens: readonly Token[],
  part: NumberSpan,
  numbers: readonly NumberSpan[],
  words: ReadonlyMap<string, Unit>,
): QuantitySpan | null => {
  const joint = part.from - 1;
  const unit = words.get(tokens[joint - 1]?.word ?? '');
  const isCounted = numbers.some(({ to }) => to === joint - 1);
  if (unit === undefined || tokens[joint]?.word !== 'and' || part.value >= 1 || part.value <= 0 || isCounted)
    return null;
  const isLed = ['a', 'an'].includes(tokens[joint - 2]?.word ?? '');
  return {
    kind: 'quantity',
    from: joint - (isLed ? 2 : 1),
    to: part.to,
    value: 1 + part.value,
    unit: unit.id,
    dimension: unit.dimension,
  };
};

/** Adds what stands behind the unit: `a stone and a half`, `two pounds and a quarter`. */
export const withPart = (tokens: readonly Token[], span: QuantitySpan): QuantitySpan => {
  const part = Number.isInteger(span.value) ? andPartAt(tokens, span.to) : null;
  return part === null ? span : { ...span, to: part.to, value: span.value + part.value };
};

/** What a bare number right behind a unit counts: `4 lb 6` ounces, `2 kilo 300` grams, `6 ft 4` inches. */
const smaller: Readonly<
  Record<string, { readonly factor: number; readonly least: number; readonly below: number }>
> = {
  lb: { factor: 1 / 16, least: 1, below: 16 },
  kg: { factor: 1 / 1000, least: 10, below: 1000 },
  ft: { factor: 1 / 12, least: 1, below: 12 },
};

const bareBehind = (
  tokens: readonly Token[],
  span: QuantitySpan,
  numbers: readonly NumberSpan[],
  singles: readonly QuantitySpan[],
): QuantitySpan => {
  const of = smaller[span.unit];
  const next = numbers.find(({ from }) => from === span.to);
  if (of === undefined || next === undefined || !Number.isInteger(span.value)) return span;
  if (!Number.isInteger(next.value) || next.value < of.least || next.value >= of.below) return span;
  const isMeasured = singles.some((other) => other.from === next.from);
  const after = tokens[next.to];
  const isEnd = after === undefined || after.isMark || partEnds.has(after.word);
  if (isMeasured || !isEnd) return span;
  return { ...span, to: next.to, value: rounded(span.value + next.value * of.factor) };
};

const partEnds = new Set(
  'average averaged mean each apiece today yesterday last this on and at for the all in'.split(' '),
);
const rounded = (value: number): number => Math.round(value * 10000) / 10000;

/** Parts of one amount put together: `4 lb 6 oz`, `a pound and two ounces`, `4 lb 6`. */
export const joinParts = (
  tokens: readonly Token[],
  singles: readonly QuantitySpan[],
  numbers: readonly NumberSpan[],
  words: ReadonlyMap<string, Unit>,
): readonly QuantitySpan[] => {
  const factorOf = (id: string): number => [...words.values()].find((unit) => unit.id === id)?.factor ?? 1;
  const joined: QuantitySpan[] = [];
  for (const span of singles) {
    const before = joined.at(-1);
    const isNext =
      before?.to === span.from || (before?.to === span.from - 1 && tokens[before.to]?.word === 'and');
    const isPart = isNext && before.dimension === span.dimension && span.dimension !== 'time';
    if (before !== undefined && isPart && factorOf(span.unit) < factorOf(before.unit)) {
      const value = before.value + (span.value * factorOf(span.unit)) / factorOf(before.unit);
      joined[joined.length - 1] = { ...before, to: span.to, value: rounded(value) };
    } else joined.push(span);
  }
  return joined.map((span) => bareBehind(tokens, span, numbers, singles));
};
