/** Whether a temperature in a line is a low or a high, by the words nearest to it. */
import type { Token } from '../tokens.ts';

const lowWords = [
  'low',
  'lo',
  'lows',
  'night',
  'nights',
  'tonight',
  'overnight',
  'down to',
  'minimum',
  'minima',
  'frost',
  'freeze',
  'freezing',
  'cold',
  'dropped',
  'drop',
  'drops',
  'dropping',
  'dipped',
  'last night',
  'bottomed',
  'dawn',
  'o n',
  'bedtime',
  'fell',
  'min',
];
const highWords = [
  'high',
  'hi',
  'touched',
  'touching',
  'shade',
  'noon',
  'highs',
  'hit',
  'hits',
  'up to',
  'maximum',
  'hot',
  'reached',
  'topped',
  'afternoon',
  'scorcher',
  'heat',
  'peaked',
  'ambient',
  'got to',
];

/** A word in front of its number binds closer than one behind. */
const behind = 1.5;

/** The side whose words stand nearer to the token; null when neither's stand in the line. */
export const sideOf = (tokens: readonly Token[], at: number): 'low' | 'high' | null => {
  const words = tokens.map((token) => token.word);
  const nearest = (names: readonly string[]): number =>
    words.reduce((best, word, n) => {
      const isHit = names.includes(word) || names.includes(`${word} ${words[n + 1] ?? ''}`);
      return isHit ? Math.min(best, n < at ? at - n : n - at + behind) : best;
    }, Number.POSITIVE_INFINITY);
  const [low, high] = [nearest(lowWords), nearest(highWords)];
  if (low === high && low === Number.POSITIVE_INFINITY) return null;
  return low <= high ? 'low' : 'high';
};
