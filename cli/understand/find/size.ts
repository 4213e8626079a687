/** Which sizes stand in a line: two lengths with `by` or `x` between them. */
import type { NumberSpan, QuantitySpan, SizeSpan } from '../spans.ts';
import type { Token } from '../tokens.ts';

const joints = new Set(['by', 'x', '×', '*']);

/** Sizes made of neighbouring lengths or bare numbers; a unit on one side counts for both. */
export const findSizes = (
  tokens: readonly Token[],
  numbers: readonly NumberSpan[],
  quantities: readonly QuantitySpan[],
): readonly SizeSpan[] => {
  const lengths = quantities.filter((span) => span.dimension === 'length');
  const bare = numbers.filter(
    // "4 x 20 kg" are four of a weight
    (span) => !quantities.some((measured) => measured.from <= span.from && span.to <= measured.to),
  );
  const sides = [...lengths, ...bare].sort((one, other) => one.from - other.from);
  return sides.flatMap((side, n): SizeSpan[] => {
    const next = sides[n + 1];
    const joint = tokens[side.to];
    if (next === undefined || joint === undefined || !joints.has(joint.word) || next.from !== side.to + 1)
      return [];
    const first = side.kind === 'quantity' ? side.unit : null;
    const second = next.kind === 'quantity' ? next.unit : null;
    return [
      { kind: 'size', from: side.from, to: next.to, sides: [side.value, next.value], unit: first ?? second },
    ];
  });
};
