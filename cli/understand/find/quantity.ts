/** Which quantities stand in a line: a number with a unit of the closed list, and `4 lb 6 oz` as one. */
import type { Unit, Units } from '../../../engine/types.ts';
import type { NumberSpan, QuantitySpan } from '../spans.ts';
import type { Token } from '../tokens.ts';
import { joinParts, oneAndPart, withPart } from './quantity-parts.ts';

const longest = 3;

/** Counted things are numbers to a reader (`6 birds`), not measures. */
const counted = new Set(['birds', 'lamps', 'drinkers', 'money', 'rate']);

const pieces = (words: string): string =>
  words
    .replace(/([°²/])/g, ' $1 ')
    // `m2` comes out of the tokens in two
    .replace(/([a-z])(\d)/g, '$1 $2')
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

/** Words between a number and its unit that change nothing. */
const fillers = new Set(['whole', 'full', 'more', 'extra', 'fewer', 'less']);

const unitAt = (
  tokens: readonly Token[],
  at: number,
  words: ReadonlyMap<string, Unit>,
): { unit: Unit; to: number } | null => {
  // `a twenty-kilo bag`, `two full bags`
  const isJoined =
    tokens[at]?.word === '-' && tokens[at]?.touches === true && tokens[at + 1]?.touches === true;
  if (isJoined || fillers.has(tokens[at]?.word ?? '')) return unitAt(tokens, at + 1, words);
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
    const odds = oddsAt(tokens, number, numbers);
    if (odds !== null) return [odds];
    const more = oneAndPart(tokens, number, numbers, words);
    if (more !== null) return [more];
    const found = unitAt(tokens, number.to, words);
    if (found !== null && isMeant(tokens, number)) {
      const unit =
        system === 'metric' ? (metricNamesakes(words).get(found.unit.id) ?? found.unit) : found.unit;
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
  return joinParts(
    tokens,
    single.map((span) => withPart(tokens, span)),
    numbers,
    words,
  );
};

/** A ton is 2,000 lb where pounds are used, and a tonne where kilos are. */
const metricNamesakes = (words: ReadonlyMap<string, Unit>): ReadonlyMap<string, Unit> => {
  const tonne = words.get('tonne');
  return new Map(tonne === undefined ? [] : [['ton', tonne]]);
};

/** `2 a day` is no two of anything; `5 a bag` is a price. */
const isMeant = (tokens: readonly Token[], number: NumberSpan): boolean =>
  !(tokens[number.to]?.word === 'a' && number.value >= 1) &&
  !(tokens[number.to]?.word === 'in' && isPlace(tokens[number.to + 1]?.word ?? '')) &&
  !isDayOlds(tokens, number);

/** `42 day-olds` are chicks, and no 42 days. */
const isDayOlds = (tokens: readonly Token[], { to, value }: NumberSpan): boolean => {
  const dash = tokens[to + 1]?.word === '-' ? 1 : 0;
  const old = tokens[to + 1 + dash]?.word;
  return value > 1 && tokens[to]?.word === 'day' && (old === 'old' || old === 'olds');
};

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
  ].includes(word) || /^\d/.test(word);

/** `one in ten`, `2 out of 50`: a share in percent. */
const oddsAt = (
  tokens: readonly Token[],
  number: NumberSpan,
  numbers: readonly NumberSpan[],
): QuantitySpan | null => {
  const at = ['times', 'parts'].includes(tokens[number.to]?.word ?? '') ? number.to + 1 : number.to;
  const dash = tokens[at]?.word === '-' ? 1 : 0;
  const out = tokens[at]?.word === 'out' && tokens[at + 1]?.word === 'of';
  if (!out && tokens[at + dash]?.word !== 'in') return null;
  const begin = at + (out ? 2 : 1) + 2 * dash;
  const whole = numbers.find(
    (span) => span.from === begin || (span.from === begin + 1 && tokens[begin]?.word === 'a'),
  );
  if (whole === undefined || whole.value <= number.value || !Number.isInteger(number.value)) return null;
  const isRound = roundWholes.has(whole.value) && number.value > 0;
  if (whole.value < 2 * number.value && !isRound) return null;
  // "2 in 10 days" tells how fast and not how many of how many
  if (timeWords.has(tokens[whole.to]?.word ?? '')) return null;
  const value = Math.round((number.value / whole.value) * 10000) / 100;
  return { kind: 'quantity', from: number.from, to: whole.to, value, unit: 'percent', dimension: 'ratio' };
};

const roundWholes = new Set([4, 5, 10, 20, 100]);
const timeWords = new Set('day days week weeks month months hour hours minutes years year'.split(' '));
