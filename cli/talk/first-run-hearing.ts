/** How a line is heard while a question of the first run stands: as its answer, or as what it says by itself. */
import type { FirstStep } from '../../engine/types.ts';
import { readPlace } from '../weather/place.ts';
import type { Flock } from './flock.ts';
import { exits, type Memory, type RecordReply, type Reply } from './reply.ts';
import { type Manner, turn } from './turn.ts';

/** Whether a line was neither an answer nor anything else that is understood; which setting it may be is known here. */
export const isLost = ({ exit, memory: { asking } }: Reply): boolean =>
  exit === exits.notUnderstood || (asking?.draft.kind === 'setting' && asking.field === 'what');

/** Whether a record was heard that cannot be: as an answer to the step, a line about something else often is. */
export const isRefused = ({ record }: Reply): boolean =>
  (record?.problems.length ?? 0) > 0 && record?.recorded === null;

const isWhole = ({ asks, problems }: RecordReply): boolean => asks === null && problems.length === 0;

/** Whether a line heard by itself is a whole record, and another one than the step takes it for. */
const isAnother = (alone: Reply, asked: Reply): boolean =>
  alone.record !== null && isWhole(alone.record) && alone.record.says !== asked.record?.says;

/** Whether a line is an answer to the step for certain, for certain not, or may be one: only a place by degrees tells itself. */
const answers = (step: FirstStep, words: string): 'yes' | 'no' | 'maybe' => {
  if (!('setting' in step) || step.setting !== 'place-at') return 'maybe';
  return readPlace(words) === null ? 'no' : 'yes';
};

/** A line of fewer words is hardly a question: what it might be meant for would only be in the way. */
const wordsOfQuestion = 3;

/** Whether a line heard by itself came to something; a record of which something would still have to be asked is none. */
const helps = (alone: Reply, words: string): boolean => {
  if (alone.record !== null) return isWhole(alone.record);
  const isOffered = alone.memory.choices.length > 0 && words.trim().split(/\s+/).length >= wordsOfQuestion;
  return !isLost(alone) || isOffered;
};

const asNoAnswer = (reply: Reply): Reply => ({
  ...reply,
  exit: exits.notUnderstood,
  memory: { ...reply.memory, choices: [] },
});

/**
 * The reply to a line. It is heard as an answer to the step; where nothing comes of that, or where by itself it is a whole
 * record of something else, as "10 whites weigh 3 lb" when people are asked for, it is heard as if nothing had been asked.
 */
export const replyTo = async (
  flock: Flock,
  step: FirstStep,
  words: string,
  memory: Memory,
  manner: Manner,
): Promise<Reply> => {
  const unasked = { ...memory, asking: null };
  const answer = answers(step, words);
  if (answer === 'yes') return turn(flock, words, memory, manner);
  // Read back first: what is written as an answer cannot be heard otherwise any more.
  const readBack = { ...manner, write: false };
  const asked = await turn(flock, words, memory, readBack);
  if (asked.record === null && !isLost(asked)) return asked;
  const alone = await turn(flock, words, unasked, readBack);
  if (answer === 'maybe' && !isLost(asked) && !isAnother(alone, asked)) {
    const answered = await turn(flock, words, memory, manner);
    if (!isRefused(answered) || !helps(alone, words)) return answered;
  }
  if (!helps(alone, words)) return asNoAnswer(asked);
  return alone.record === null ? alone : turn(flock, words, unasked, manner);
};
