/** Which share of the birds alive at one age is expected to be alive at a later one. */
import type { Reader } from '../define.ts';

export const survivalFigures = ['losses/pattern'];

/**
 * Share of birds left from one age to another, both in days; 1 to an earlier age.
 * @param rate share of birds usually lost over a whole batch; undefined where that is not known
 */
export const survivalLine = (
  read: Reader,
  kind: string,
  rate: number | undefined,
): ((from: number, to: number) => number) => {
  if (rate === undefined) return () => 1;
  const behind = read.along('losses/pattern', [kind]);
  const left = (age: number): number => Math.max(0, 1 - rate * behind(Math.max(0, age)));
  return (from, to) => {
    if (to <= from) return 1;
    const now = left(from);
    return now === 0 ? 1 : left(to) / now;
  };
};
