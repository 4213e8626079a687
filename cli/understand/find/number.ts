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
/** Nouns that stand for a number of things: `a pair of reds`, `a score and a half`, `a tenner`. */
const nouns = new Map([
  ['couple', 2],
  ['pair', 2],
  ['brace', 2],
  ['trio', 3],
  ['score', 20],
  ['fiver', 5],
  ['tenner', 10],
]);
const dozens = new Set(['dozen', 'dozens', 'doz', 'dz']);
/** Nouns that multiply what stands before them. */
const multiples = new Map([...[...dozens].map((word) => [word, 12] as const), ['score', 20] as const]);
const isDigits = (word: string): boolean =>
  /^(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+,\d{1,2}|\d*\.?\d+)$/.test(word);
/** `1,6` has its comma for a point; `1,600` has it between thousands. */
const digitsOf = (word: string): string =>
  /^\d+,\d{1,2}$/.test(word) ? word.replace(',', '.') : word.replaceAll(',', '');
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
  const times = multiples.get(next);
  if (times !== undefined) {
    const stop = next === 'doz' && wordAt(tokens, part.to + 1) === '.' ? 1 : 0;
    return { ...part, value: part.value * times, to: part.to + 1 + stop, digits: null };
  }
  if (next !== 'hundred') return part;
  const joined = wordAt(tokens, part.to + 1) === 'and' ? part.to + 2 : part.to + 1;
  const rest = readWords(tokens, joined);
  return rest === null || rest.value >= 100
    ? { value: part.value * 100, to: part.to + 1, digits: null }
    : { value: part.value * 100 + rest.value, to: rest.to, digits: null };
};

/** A part as it stands behind `and` or a whole number: `a half`, `three quarters`, `1/4`. */
const partAt = (tokens: readonly Token[], at: number): Part | null => {
  const begin = ['a', 'one'].includes(wordAt(tokens, at)) ? at + 1 : at;
  if (['three', '3'].includes(wordAt(tokens, begin))) {
    const dash = wordAt(tokens, begin + 1) === '-' ? 1 : 0;
    const named = ['quarter', 'quarters'].includes(wordAt(tokens, begin + 1 + dash));
    return named ? { value: 0.75, to: begin + 2 + dash, digits: null } : null;
  }
  const value = readFraction(wordAt(tokens, begin));
  return value === null ? null : { value, to: begin + 1, digits: null };
};

/** The part behind `and`, as in `a bag and a half`; null where something else follows. */
export const andPartAt = (
  tokens: readonly Token[],
  at: number,
): { readonly value: number; readonly to: number } | null => {
  if (!['and', '&'].includes(wordAt(tokens, at))) return null;
  const part = partAt(tokens, at + 1);
  // "a bag and half a bag" tells of two
  const isBare = !['a', 'one'].includes(wordAt(tokens, at + 1));
  const isOther = isBare && ['a', 'of', 'the', 'dozen'].includes(wordAt(tokens, part?.to ?? at));
  return part === null || isOther ? null : part;
};

/** Adds `and a half`, `1/2` after a whole number. */
const addPart = (tokens: readonly Token[], part: Part): Part => {
  if (!Number.isInteger(part.value)) return part;
  const extra = andPartAt(tokens, part.to);
  if (extra !== null) {
    // half of a score are ten: "a score and a half"
    const whole = multiples.get(wordAt(tokens, part.to - 1)) ?? 1;
    return { value: part.value + extra.value * whole, to: extra.to, digits: null };
  }
  const word = wordAt(tokens, part.to);
  const written = fraction.test(word) || /^[½¼¾]$/.test(word) ? readFraction(word) : null;
  return written === null ? part : { value: part.value + written, to: part.to + 1, digits: null };
};

/** `half a dozen`, `half of a dozen`, `a half dozen`, `half a hundred`. */
const halfOf = (tokens: readonly Token[], at: number): Part | null => {
  const begin = wordAt(tokens, at) === 'a' ? at + 1 : at;
  if (wordAt(tokens, begin) !== 'half') return null;
  let to = begin + 1;
  while (['a', 'of', '-'].includes(wordAt(tokens, to))) to += 1;
  const whole = dozens.has(wordAt(tokens, to)) ? 12 : wordAt(tokens, to) === 'hundred' ? 100 : null;
  return whole === null ? null : { value: whole / 2, to: to + 1, digits: null };
};

/** `a pair`, `his pair`, `a brace of`; hands come in pairs and are counted otherwise. */
const nounAt = (tokens: readonly Token[], at: number): Part | null => {
  const begin = ['a', 'an', 'one'].includes(wordAt(tokens, at)) ? at + 1 : at;
  const value = nouns.get(wordAt(tokens, begin));
  const isHands = wordAt(tokens, begin + 1) === 'of' && wordAt(tokens, begin + 2) === 'hands';
  return value === undefined || isHands ? null : { value, to: begin + 1, digits: null };
};

const start = (tokens: readonly Token[], at: number): Part | null => {
  const word = wordAt(tokens, at);
  const next = wordAt(tokens, at + 1);
  if (isDigits(word)) return { value: Number(digitsOf(word)), to: at + 1, digits: digitsOf(word) };
  const known = halfOf(tokens, at) ?? nounAt(tokens, at);
  if (known !== null) return known;
  if (['a', 'an', 'one'].includes(word) && (dozens.has(next) || next === 'hundred'))
    return { value: 1, to: at + 1, digits: null };
  if (dozens.has(word) || word === 'hundred') {
    const stop = word === 'doz' && next === '.' ? 1 : 0;
    return { value: word === 'hundred' ? 100 : 12, to: at + 1 + stop, digits: null };
  }
  if ((word === 'a' || word === 'an') && (next === 'third' || next === 'quarter' || next === 'half'))
    return { value: parts.get(next) ?? 0, to: at + 2, digits: null };
  if (word === 'three') {
    const quarters = partAt(tokens, at);
    if (quarters !== null) return quarters;
  }
  // 'the third' is a day, and 'quarter past six' a time
  const isOther = word === 'third' || (word === 'quarter' && ['past', 'to', 'after'].includes(next));
  const part = isOther ? null : readFraction(word);
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
