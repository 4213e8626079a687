/** Which quantities stand in a line: a number with a unit of the closed list, and `4 lb 6 oz` as one. */
import type { Unit, Units } from '../../../engine/types.ts';
import type { NumberSpan, QuantitySpan } from '../spans.ts';
import type { Token } from '../tokens.ts';

const longest = 3;

/** Counted things are numbers to a reader (`6 birds`), not measures. */
const counted = new Set(['birds', 'lamps', 'drinkers', 'money', 'rate']);

const pieces = (words: string): string =>
  words
    .replace(/([°²/])/g, ' $1 ')
    .replace(/\s+/g, ' ')
    .trim();

/** Unit words → unit, as they come out of the tokens. */
export const unitWords = (units: Units): ReadonlyMap<string, Unit> => {
  const found = new Map<string, Unit>();
  for (const unit of units.list) {
    if (counted.has(unit.dimension)) continue;
    for (const word of unit.words) {
      if (word !== 'w' && !found.has(pieces(word))) found.set(pieces(word), unit);
    }
  }
  return found;
};

const unitAt = (
  tokens: readonly Token[],
  at: number,
  words: ReadonlyMap<string, Unit>,
): { unit: Unit; to: number } | null => {
  const first = tokens[at]?.word;
  // `half a bag`, `a third of a bag`, `a quarter of the bag`
  const skip =
    first === 'of' ? 2 : (first === 'a' || first === 'an') && tokens[at + 1]?.isMark === false ? 1 : 0;
  const begin = at + skip;
  for (let size = longest; size > 0; size -= 1) {
    const unit = words.get(
      tokens
        .slice(begin, begin + size)
        .map((token) => token.word)
        .join(' '),
    );
    if (unit !== undefined && begin + size <= tokens.length) return { unit, to: begin + size };
  }
  return null;
};

/** A bare `degrees` is of the place's own system. */
const degreesAt = (tokens: readonly Token[], at: number): number | null => {
  const word = tokens[at]?.word;
  return word === 'degrees' || word === 'degree' || word === 'deg' || word === '°' ? at + 1 : null;
};

/** The quantities among the numbers of a line; those without a unit are left out. */
export const findQuantities = (
  tokens: readonly Token[],
  numbers: readonly NumberSpan[],
  words: ReadonlyMap<string, Unit>,
  system: 'us' | 'metric',
): readonly QuantitySpan[] => {
  const single = numbers.flatMap((number): QuantitySpan[] => {
    const found = unitAt(tokens, number.to, words);
    if (found !== null && isMeant(tokens, number)) {
      const { unit } = found;
      return [
        {
          kind: 'quantity',
          from: number.from,
          to: found.to,
          value: number.value,
          unit: unit.id,
          dimension: unit.dimension,
        },
      ];
    }
    const to = degreesAt(tokens, number.to);
    if (to === null) return [];
    const unit = system === 'us' ? 'F' : 'C';
    return [{ kind: 'quantity', from: number.from, to, value: number.value, unit, dimension: 'temperature' }];
  });
  return joinParts(single, words);
};

/** `2 a day` is no two of anything; `5 a bag` is a price. */
const isMeant = (tokens: readonly Token[], number: NumberSpan): boolean =>
  !(tokens[number.to]?.word === 'a' && number.value >= 1) &&
  !(tokens[number.to]?.word === 'in' && isPlace(tokens[number.to + 1]?.word ?? ''));

/** `26 in it` are no inches. */
const isPlace = (word: string): boolean =>
  [
    'it',
    'the',
    'a',
    'there',
    'here',
    'them',
    'all',
    'total',
    'this',
    'that',
    'my',
    'our',
    'each',
    'one',
    'for',
    'today',
    'bags',
    'freezer',
  ].includes(word);

const joinParts = (
  singles: readonly QuantitySpan[],
  words: ReadonlyMap<string, Unit>,
): readonly QuantitySpan[] => {
  const factorOf = (id: string): number => [...words.values()].find((unit) => unit.id === id)?.factor ?? 1;
  const joined: QuantitySpan[] = [];
  for (const span of singles) {
    const before = joined.at(-1);
    const isPart =
      before?.to === span.from && before.dimension === span.dimension && span.dimension !== 'time';
    if (before !== undefined && isPart && factorOf(span.unit) < factorOf(before.unit)) {
      const value = before.value + (span.value * factorOf(span.unit)) / factorOf(before.unit);
      joined[joined.length - 1] = { ...before, to: span.to, value: Math.round(value * 10000) / 10000 };
    } else joined.push(span);
  }
  return joined;
};
