/** How often in a day something is said to be done: `every other day`, `twice a day`, `every 3 days`. */
import type { Token } from '../tokens.ts';
import { numberAt } from './number.ts';

/** More often than this no pen is moved. */
const most = 6;

const fixed: readonly (readonly [readonly string[], number])[] = [
  [['every', 'other', 'day'], 1 / 2],
  [['every', 'second', 'day'], 1 / 2],
  [['every', 'third', 'day'], 1 / 3],
  [['every', 'two', 'days'], 1 / 2],
  [['every', 'three', 'days'], 1 / 3],
  [['once', 'a', 'week'], 1 / 7],
  [['twice', 'a', 'week'], 2 / 7],
  [['twice', 'a', 'day'], 2],
  [['twice', 'daily'], 2],
  [['three', 'times', 'a', 'day'], 3],
  [['once', 'a', 'day'], 1],
  [['every', 'day'], 1],
  [['daily'], 1],
];

/** Times a day; null where nothing of the kind is said. */
export const findOften = (tokens: readonly Token[]): number | null => {
  const words = tokens.map((token) => token.word);
  const says = (phrase: readonly string[]): boolean =>
    words.some((_, at) => phrase.every((word, n) => words[at + n] === word));
  const times = words.findIndex(
    (word, at) =>
      at > 0 && word === 'times' && ['a', 'every', 'each', 'in', 'daily'].includes(words[at + 1] ?? ''),
  );
  const many = times > 0 ? numberAt(tokens, times - 1)?.value : undefined;
  if (many !== undefined && many > 0 && many <= most) return many;
  if (says(['morning', 'and', 'night']) || says(['morning', 'and', 'evening'])) return 2;
  const days = words.findIndex(
    (word, at) => word === 'every' && /^\d+$/.test(words[at + 1] ?? '') && words[at + 2]?.startsWith('day'),
  );
  const count = Number(words[days + 1]);
  if (days >= 0 && count > 0) return 1 / count;
  return fixed.find(([phrase]) => says(phrase))?.[1] ?? null;
};
