/** Which low, high and humidity a question speaks of, also where a bare number is meant as degrees: `down to 38 tonight`. */
import type { NumberSpan, QuantitySpan } from '../spans.ts';
import { spansOf } from '../spans.ts';
import type { Line } from './all.ts';
import { sideOf } from './low-or-high.ts';

export interface Degrees {
  readonly low?: number;
  readonly high?: number;
  /** Percent. */
  readonly humidity?: number;
  /** The unit that was said, or the place's own for `degrees`; null for bare numbers. */
  readonly unit: string | null;
  /** The bare numbers that were taken for degrees or percent. */
  readonly taken: readonly NumberSpan[];
}

const before = new Set(
  'to at of hit hits be is its it reach reaches like about around below above under over near drop drops dip dips low lows high highs minimum maximum down only feels'.split(
    ' ',
  ),
);
const behind = new Set(
  'out outside tonight tomorrow today overnight weather night nights day days forecast degrees in'.split(' '),
);
const about = new Set(['low', 'high', 'weather', 'warm', 'temperature', 'night', 'forecast', 'weather-care']);

/** Air on earth, in either unit. */
const [coldest, hottest] = [-40, 130];

const isEnd = (word: string | undefined): boolean => word === undefined || /^\W+$/.test(word);

const isBareDegrees = (line: Line, { from, to, value }: NumberSpan): boolean => {
  const next = line.tokens[to]?.word;
  const isAmong = line.tokens.slice(Math.max(0, from - 2), from).some((token) => before.has(token.word));
  return value >= coldest && value <= hottest && isAmong && (isEnd(next) || behind.has(next ?? ''));
};

/** How far behind the word a bare number may stand: `humidity will be 60`. */
const reach = 3;

const humidityIn = (line: Line): QuantitySpan | NumberSpan | undefined => {
  const at = line.tokens.findIndex((token) => token.word.startsWith('humid'));
  if (at === -1) return undefined;
  return (
    spansOf(line.spans, 'quantity').find((span) => span.dimension === 'ratio') ??
    spansOf(line.spans, 'number').find((span) => span.from > at && span.from <= at + reach)
  );
};

/** Degrees and humidity in a line. A temperature that no word places counts as a high. */
export const findDegrees = (line: Line): Degrees => {
  const stated = spansOf(line.spans, 'quantity').filter((span) => span.dimension === 'temperature');
  const speaksOfAir = spansOf(line.spans, 'term').some((span) => span.list === 'idea' && about.has(span.id));
  const humidity = humidityIn(line);
  const bare =
    stated.length > 0
      ? []
      : spansOf(line.spans, 'number').filter(
          // nothing but the air is counted below nought
          (span) => span !== humidity && (speaksOfAir || span.value < 0) && isBareDegrees(line, span),
        );
  const sides: { low?: number; high?: number } = {};
  for (const { from, value } of [...stated, ...bare] as readonly (QuantitySpan | NumberSpan)[]) {
    const side = sideOf(line.tokens, from) ?? 'high';
    sides[side] ??= value;
  }
  return {
    ...sides,
    ...(humidity === undefined ? {} : { humidity: humidity.value }),
    unit: stated[0]?.unit ?? null,
    taken: humidity?.kind === 'number' ? [...bare, humidity] : bare,
  };
};
