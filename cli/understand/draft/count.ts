/** How many birds a line speaks of. */
import { type NumberSpan, spansOf } from '../spans.ts';
import type { Token } from '../tokens.ts';
import { isOneBird } from './one-bird.ts';
import { sumOfParts } from './parts-of-count.ts';
import { numbers, type Told } from './told.ts';

const birds = new Set([
  'bird',
  'chick',
  'chicken',
  'hen',
  'rooster',
  'cockerel',
  'pullet',
  'carcass',
  'casualty',
  'body',
  'baby',
  'broiler',
  'head',
  'hd',
]);

/** "minus three" counts three. */
const isWhole = (span: NumberSpan): boolean => Number.isInteger(span.value);
const countOf = (span: NumberSpan): number => Math.abs(span.value);

/** `six of us at it`, `a four pounder`, `panting at 2`: no number of birds. */
const isOther = (tokens: readonly Token[], { from, to, value }: NumberSpan): boolean => {
  const [before, after, next] = [tokens[from - 1], tokens[to], tokens[to + 1]].map(
    (token) => token?.word ?? '',
  );
  const isHour = before === 'at' && value <= 12 && (tokens[to] === undefined || tokens[to]?.isMark === true);
  return isHour || after === 'pounder' || (after === 'of' && next === 'us');
};

const isBirdNear = (near: readonly (Token | undefined)[]): boolean =>
  near.some((token) => token !== undefined && birds.has(token.stem));

/** A number that stands next to birds, or that is the first whole one; null when none is said. */
export const readCount = (told: Told): number | null => {
  const { tokens } = told.line;
  const sum = sumOfParts(told);
  if (sum !== null) return sum;
  const groups = spansOf(told.line.spans, 'group');
  const whole = numbers(told).filter((span) => isWhole(span) && !isOther(tokens, span));
  const beside = whole.find((span) => {
    const isBird = isBirdNear([tokens[span.to], tokens[span.to + 1], tokens[span.to + 2]]);
    return isBird || groups.some((group) => group.from >= span.to && group.from <= span.to + 2);
  });
  const found = beside ?? whole.find((span) => span.value !== 0 || tokens[span.to]?.stem === 'dead');
  if (found !== undefined) return countOf(found);
  return isOneBird(told) ? 1 : null;
};

/** A number just before or after one of these words, such as `1 dead`; the one nearest to them. */
export const countBeside = (told: Told, words: readonly string[]): number | null => {
  const { tokens } = told.line;
  const reach = 4;
  const behind = numbers(told)
    .filter(isWhole)
    .flatMap((span) => {
      const after = tokens.slice(span.to, span.to + reach).findIndex((token) => token.isMark);
      const near = tokens.slice(span.to, span.to + (after < 0 ? reach : after)).map((token) => token.word);
      const at = near.findIndex((word) => words.includes(word));
      return at < 0 ? [] : [{ span, at }];
    })
    .sort((one, other) => one.at - other.at);
  const [nearest] = behind;
  return nearest === undefined ? null : countOf(nearest.span);
};
