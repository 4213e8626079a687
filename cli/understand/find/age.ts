/** Which ages stand in a line: `6 weeks old`, `day 9`, `at 5 weeks`. */
import type { AgeSpan, NumberSpan, QuantitySpan } from '../spans.ts';
import type { Token } from '../tokens.ts';

const perUnit = new Map([
  ['day', 1],
  ['days', 1],
  ['week', 7],
  ['weeks', 7],
  ['wk', 7],
]);

const word = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';

/** Ages: a time with `old`, `of age`, `at` or `reach` about it, or `day 9`. */
export const findAges = (
  tokens: readonly Token[],
  numbers: readonly NumberSpan[],
  quantities: readonly QuantitySpan[],
): readonly AgeSpan[] => {
  const spoken = quantities.flatMap((span): AgeSpan[] => {
    if (span.dimension !== 'time' || span.unit === 'h') return [];
    const dash = word(tokens, span.to) === '-' ? 1 : 0;
    const after = word(tokens, span.to + dash);
    const before = word(tokens, span.from - 1);
    const old = after === 'old' || after === 'olds';
    const ofAge = after === 'of' && word(tokens, span.to + 1) === 'age';
    if (!old && !ofAge && !['at', 'age', 'aged', 'reach', 'are', 'is'].includes(before)) return [];
    const to = old ? span.to + dash + 1 : ofAge ? span.to + 2 : span.to;
    return [{ kind: 'age', from: span.from, to, days: span.value * (span.unit === 'week' ? 7 : 1) }];
  });
  const named = numbers.flatMap((span): AgeSpan[] => {
    const days = perUnit.get(word(tokens, span.from - 1));
    return days === undefined
      ? []
      : [{ kind: 'age', from: span.from - 1, to: span.to, days: span.value * days }];
  });
  return [...spoken, ...named];
};
