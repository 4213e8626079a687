/** Which numbers stand in a line, in digits or in words. Ranges and `a few` are no numbers. */
import type { NumberSpan } from '../spans.ts';
import type { Token } from '../tokens.ts';

const small = new Map(
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
    .split(' ')
    .map((word, value) => [word, value] as const),
);
const tens = new Map(
  'twenty thirty forty fifty sixty seventy eighty ninety'
    .split(' ')
    .map((word, at) => [word, (at + 2) * 10] as const),
);
const parts = new Map([
  ['half', 0.5],
  ['quarter', 0.25],
  ['third', 1 / 3],
  ['½', 0.5],
  ['¼', 0.25],
  ['¾', 0.75],
]);
const isDigits = (word: string): boolean => /^(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d*\.?\d+)$/.test(word);
const fraction = /^(\d{1,2})\/(\d{1,2})$/;

interface Part {
  readonly value: number;
  readonly to: number;
  readonly digits: string | null;
}

const wordAt = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';

const readFraction = (word: string): number | null => {
  const part = parts.get(word);
  if (part !== undefined) return part;
  const found = fraction.exec(word);
  const below = Number(found?.[2] ?? 0);
  return found === null || below < 2 || Number(found[1]) >= below ? null : Number(found[1]) / below;
};

/** A whole number in words from `at`: `forty two`, `a hundred and ten`, `two dozen`. */
const readWords = (tokens: readonly Token[], at: number): Part | null => {
  const word = wordAt(tokens, at);
  const ten = tens.get(word);
  if (ten !== undefined) {
    const dash = wordAt(tokens, at + 1) === '-' ? 1 : 0;
    const unit = small.get(wordAt(tokens, at + 1 + dash));
    return unit !== undefined && unit > 0 && unit < 10
      ? { value: ten + unit, to: at + 2 + dash, digits: null }
      : { value: ten, to: at + 1, digits: null };
  }
  const unit = small.get(word);
  return unit === undefined ? null : { value: unit, to: at + 1, digits: null };
};

const multiply = (tokens: readonly Token[], part: Part): Part => {
  const next = wordAt(tokens, part.to);
  if (next === 'dozen') return { ...part, value: part.value * 12, to: part.to + 1, digits: null };
  if (next !== 'hundred') return part;
  const joined = wordAt(tokens, part.to + 1) === 'and' ? part.to + 2 : part.to + 1;
  const rest = readWords(tokens, joined);
  return rest === null || rest.value >= 100
    ? { value: part.value * 100, to: part.to + 1, digits: null }
    : { value: part.value * 100 + rest.value, to: rest.to, digits: null };
};

/** Adds `and a half`, `1/2` after a whole number. */
const addPart = (tokens: readonly Token[], part: Part): Part => {
  if (!Number.isInteger(part.value)) return part;
  let at = part.to;
  if (wordAt(tokens, at) === 'and') {
    at += wordAt(tokens, at + 1) === 'a' ? 2 : 1;
    const extra = readFraction(wordAt(tokens, at));
    return extra === null ? part : { value: part.value + extra, to: at + 1, digits: null };
  }
  const word = wordAt(tokens, at);
  const extra = fraction.test(word) || /^[½¼¾]$/.test(word) ? readFraction(word) : null;
  return extra === null ? part : { value: part.value + extra, to: at + 1, digits: null };
};

const start = (tokens: readonly Token[], at: number): Part | null => {
  const word = wordAt(tokens, at);
  const next = wordAt(tokens, at + 1);
  if (isDigits(word))
    return { value: Number(word.replaceAll(',', '')), to: at + 1, digits: word.replaceAll(',', '') };
  if (word === 'couple') return { value: 2, to: at + 1, digits: null };
  if (word === 'a' && next === 'couple') return { value: 2, to: at + 2, digits: null };
  if ((word === 'a' || word === 'an' || word === 'one') && (next === 'dozen' || next === 'hundred'))
    return { value: 1, to: at + 1, digits: null };
  if (word === 'dozen') return { value: 12, to: at + 1, digits: null };
  if (word === 'half' && next === 'a' && wordAt(tokens, at + 2) === 'dozen')
    return { value: 6, to: at + 3, digits: null };
  if ((word === 'a' || word === 'an') && (next === 'third' || next === 'quarter' || next === 'half'))
    return { value: parts.get(next) ?? 0, to: at + 2, digits: null };
  if (word === 'three' && next === 'quarters') return { value: 0.75, to: at + 2, digits: null };
  const part = word === 'third' || word === 'quarter' ? null : readFraction(word);
  if (part !== null) return { value: part, to: at + 1, digits: null };
  return readWords(tokens, at);
};

/** The number that begins at a token, with its sign, or null. */
export const numberAt = (tokens: readonly Token[], at: number): NumberSpan | null => {
  const before = tokens[at - 1];
  const found = start(tokens, at);
  if (found === null) return null;
  const whole = addPart(tokens, multiply(tokens, found));
  const below =
    before?.word === 'minus' || (before?.word === '-' && !before.touches && tokens[at]?.touches === true);
  return {
    kind: 'number',
    from: below ? at - 1 : at,
    to: whole.to,
    value: below ? -whole.value : whole.value,
    digits: whole.digits,
  };
};

/** All numbers of a line, left to right. Both ends of a range (`2-3`, `five or six`) are left out, because it is not known which. */
export const findNumbers = (tokens: readonly Token[]): readonly NumberSpan[] => {
  const found: NumberSpan[] = [];
  let at = 0;
  while (at < tokens.length) {
    const span = numberAt(tokens, at);
    if (span === null) at += 1;
    else {
      found.push(span);
      at = span.to;
    }
  }
  const isRange = (low: NumberSpan, high: NumberSpan): boolean => {
    const between = tokens.slice(low.to, high.from);
    const joint = between[0]?.word;
    return between.length === 1 && (joint === 'or' || (joint === '-' && between[0]?.touches === true));
  };
  return found.filter((span, n) => {
    const before = found[n - 1];
    const after = found[n + 1];
    return !(
      (before !== undefined && isRange(before, span)) ||
      (after !== undefined && isRange(span, after))
    );
  });
};
