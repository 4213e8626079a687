/** Notes an answer as advice given. */
import type { Flock } from './flock.ts';
import { hearAlone, isHeardSame } from './hear-alone.ts';
import type { Memory } from './reply.ts';

/**
 * Puts the answer just given on the advice log, where one is kept. What holds only under a what-if is no advice. Whether it
 * could be written changes nothing for the keeper, so nothing is said of it.
 */
export const noteAdvice = async (
  flock: Flock,
  words: string,
  { answer, heard, inside }: Memory,
): Promise<void> => {
  const isSupposed = inside.length > 0 || (heard?.readings[0]?.supposing.length ?? 0) > 0;
  if (flock.advice === undefined || answer === null || isSupposed) return;
  const { rulesFolder, at } = flock.advice;
  const alone = hearAlone(flock, words, flock.today);
  const isAlone = alone !== null && isHeardSame(alone, answer.request);
  await flock.engine().audit(rulesFolder).note(answer, words, at, isAlone);
};
