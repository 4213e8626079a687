/** How many birds a line speaks of. */
import { type NumberSpan, spansOf } from '../spans.ts';
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
]);
const articles = new Set(['a', 'an', 'another', 'my', 'the', 'one']);

const isWhole = (span: NumberSpan): boolean => Number.isInteger(span.value) && span.value >= 0;

/** A number that stands next to birds, or that is the first whole one; null when none is said. */
export const readCount = (told: Told): number | null => {
  const { tokens } = told.line;
  const groups = spansOf(told.line.spans, 'group');
  const whole = numbers(told).filter(isWhole);
  const beside = whole.find((span) => {
    const near = [tokens[span.to], tokens[span.to + 1], tokens[span.to + 2]];
    const isBird = near.some((token) => token !== undefined && birds.has(token.stem));
    return isBird || groups.some((group) => group.from >= span.to && group.from <= span.to + 2);
  });
  const found = beside ?? whole.find((span) => span.value > 0 || tokens[span.to]?.stem === 'dead');
  if (found !== undefined) return found.value;
  const isOne = tokens.some((token, at) => {
    const next = tokens[at + 1];
    if (!articles.has(token.word) || next === undefined) return false;
    const one = groups.some((group) => group.from === at + 1 && group.one);
    return (
      (token.word !== 'the' &&
        token.word !== 'my' &&
        (birds.has(next.word) || ['casualty', 'dead'].includes(next.word))) ||
      one
    );
  });
  return isOne ? 1 : null;
};

/** A number just before or after one of these words, such as `1 dead`. */
export const countBeside = (told: Told, words: readonly string[]): number | null => {
  const { tokens } = told.line;
  for (const span of numbers(told).filter(isWhole)) {
    const after = tokens.slice(span.to, span.to + 4).findIndex((token) => token.isMark);
    const near = tokens.slice(span.to, span.to + (after < 0 ? 4 : after)).map((token) => token.word);
    if (near.some((word) => words.includes(word))) return span.value;
  }
  return null;
};
