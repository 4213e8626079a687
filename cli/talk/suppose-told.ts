/** A what-if made of something that might be told, `what if we put the whites out today`: the last question under it; nothing is written. */
import type { Day } from '../../engine/day.ts';
import { emptyJson } from '../say/as-json.ts';
import type { Heard, Reading } from '../understand/types.ts';
import { askReading } from './ask.ts';
import type { Flock } from './flock.ts';
import { heardAsJson } from './heard-as-json.ts';
import { exits, type Memory, type Reply } from './reply.ts';

const nothingAsked = 'Nothing is written: that only supposes something.';
const howToAsk = 'Say with it what you want to know, or ask first and suppose then.';

/** Answers the last question as if the records of this line had been told; says what is lacking when none was asked. */
export const askSupposing = async (
  flock: Flock,
  words: string,
  told: Reading,
  on: Day,
  memory: Memory,
): Promise<Reply> => {
  const last = memory.asked?.readings[0];
  if (memory.answer === null || last === undefined || flock.book.questions[last.topic]?.kind === 'about') {
    return {
      tokens: [
        { t: 'claim', text: nothingAsked },
        { t: 'next', text: howToAsk },
      ],
      json: { ...emptyJson(words, heardAsJson(told)), verdict: 'cannot-say', headline: nothingAsked },
      record: null,
      exit: exits.cannotSay,
      memory: { ...memory, choices: [] },
    };
  }
  const reading: Reading = { ...last, supposing: [...last.supposing, ...told.supposing], stays: true };
  const heard: Heard = { words, readings: [reading], sure: true, nearest: [] };
  return askReading(flock, words, heard, reading, on, memory);
};
