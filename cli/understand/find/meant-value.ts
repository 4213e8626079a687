/** A value as it is meant for a fact: as it stands, a step from what there is, a share, a number of times, or days from a day. */
import type { Token } from '../tokens.ts';
import type { Supposing } from '../types.ts';
import type { Sorted } from './sorts.ts';
import type { Placing, Supposable } from './supposable.ts';

const wordsOf = (words: string): ReadonlySet<string> => new Set(words.split(' '));

const more = wordsOf(
  'more extra additional spare third fourth warmer hotter higher another later longer further milder older dearer bigger heavier second',
);
const less = wordsOf(
  'fewer less colder cooler lower earlier sooner off younger cheaper lighter smaller down worse',
);
const falling = wordsOf('fall falls fell drop drops dropped dips dipped took takes');
/** What brings a day nearer; without one of these a number of days puts it off. */
const nearer = wordsOf('earlier sooner before forward early less shy');

/** How far in front of a step a word may stand that turns it down: `fell a further three`. */
const reach = 4;

/** Whether a value is a step from what there is, and which way. */
const stepOf = (
  tokens: readonly Token[],
  span: Sorted,
): { readonly sign: number; readonly adds: boolean } => {
  const near = [
    ...tokens.slice(span.from, span.to + 2),
    ...tokens.slice(Math.max(0, span.from - 1), span.from),
  ].map(({ word }) => word);
  if (near.some((word) => less.has(word))) return { sign: -1, adds: true };
  const adds = near.some((word) => more.has(word));
  const isDown =
    adds && tokens.slice(Math.max(0, span.from - reach), span.from).some(({ word }) => falling.has(word));
  return { sign: isDown ? -1 : 1, adds };
};

const isShare = ({ sort }: Sorted): boolean => sort === 'share' || sort === 'ratio';
const onClock = (hour: number): string => `${String(hour).padStart(2, '0')}:00`;

/** What is supposed where a value is meant for a fact. */
export const supposingOf = (
  { fact, by, value: said }: Supposable,
  tokens: readonly Token[],
  { bag }: Placing,
): Supposing => {
  const isBagged = said.sort === 'bags' && by.takes.includes('mass');
  const value = isBagged ? { ...said, value: said.value * bag, unit: 'kg' } : said;
  const supposed = { what: by.as, fact, value: value.value, unit: value.unit };
  if (value.text !== undefined) return { ...supposed, value: value.text, adds: false };
  if (value.sort === 'hour') return { ...supposed, value: onClock(value.value), adds: false };
  if (value.sort === 'age' && by.from !== null) {
    const isNearer = tokens.slice(value.from, value.to + reach).some(({ word }) => nearer.has(word));
    return { ...supposed, value: isNearer ? -value.value : value.value, adds: true, from: by.from };
  }
  if (value.sort === 'times') return { ...supposed, adds: false, times: true };
  if (by.takesAway && isShare(value)) return { ...supposed, adds: false, share: 'goes' };
  if (by.takesAway)
    return { ...supposed, adds: true, share: 'goes', ...(by.tells === null ? {} : { tells: by.tells }) };
  if (by.shareOf !== null && isShare(value)) return { ...supposed, adds: false, share: 'is', of: by.shareOf };
  const { sign, adds } = stepOf(tokens, value);
  // "feed 10 % dearer" multiplies the price
  if (value.sort === 'ratio' && adds && by.takes.includes('times'))
    return { ...supposed, value: 1 + (sign * value.value) / 100, unit: null, adds: false, times: true };
  return { ...supposed, value: value.value * sign, adds };
};
