/** Which ages and times of day stand in a line: `6 weeks old`, `day 9`, `at 5 weeks`, `7:30`. */
import type { AgeSpan, NumberSpan, QuantitySpan, TimeSpan } from '../spans.ts';
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

const pad = (value: number): string => String(value).padStart(2, '0');

/** Times of day: `07:00`, `6am`, `8 o'clock`. */
export const findTimes = (tokens: readonly Token[], numbers: readonly NumberSpan[]): readonly TimeSpan[] => {
  const clock = tokens.flatMap((token, at): TimeSpan[] => {
    const found = /^(\d{1,2}):(\d{2})$/.exec(token.word);
    if (found === null || Number(found[1]) > 23 || Number(found[2]) > 59) return [];
    const later = word(tokens, at + 1) === 'pm' && Number(found[1]) < 12 ? 12 : 0;
    const named = ['am', 'pm'].includes(word(tokens, at + 1)) ? 2 : 1;
    return [{ kind: 'time', from: at, to: at + named, at: `${pad(Number(found[1]) + later)}:${found[2]}` }];
  });
  const spoken = numbers.flatMap((span): TimeSpan[] => {
    const half = word(tokens, span.to);
    if (
      !['am', 'pm', 'oclock'].includes(half) ||
      !Number.isInteger(span.value) ||
      span.value < 0 ||
      span.value > 12
    )
      return [];
    const hour = (span.value % 12) + (half === 'pm' ? 12 : 0);
    return [
      {
        kind: 'time',
        from: span.from,
        to: span.to + 1,
        at: `${pad(half === 'oclock' ? span.value : hour)}:00`,
      },
    ];
  });
  return [...clock, ...spoken];
};
