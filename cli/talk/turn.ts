/** One line of the keeper's → one reply. The chat, the shell and a pipe all come through here. */
import type { Day } from '../../engine/day.ts';
import { emptyJson } from '../say/as-json.ts';
import { offerOf } from '../say/help.ts';
import { sayLeftOut } from '../say/left-out.ts';
import type { Token } from '../say/tokens.ts';
import { readAsOwn } from '../understand/read-as.ts';
import type { Heard, Reading } from '../understand/types.ts';
import { understand } from '../understand/understand.ts';
import { answerAbout, isAboutAnswers } from './about-answers.ts';
import { askReading } from './ask.ts';
import { askedOfBook } from './book-asked.ts';
import { answerChanged } from './changed.ts';
import { aboutFor, type Flock } from './flock.ts';
import { answerForecast } from './forecast.ts';
import { forecastWish } from './forecast-wish.ts';
import { nothingHeard } from './heard-as-json.ts';
import { leaveByRecord } from './inside.ts';
import { noteAdvice } from './note-advice.ts';
import { answerOffered, askMeant, chosen } from './offered.ts';
import { answerPutRight } from './put-right.ts';
import { exits, type Memory, type Reply } from './reply.ts';
import { answerSheet } from './sheet.ts';
import { askSupposing } from './suppose-told.ts';
import { restingReading } from './supposed.ts';
import { tellReading } from './tell.ts';
import { supposeTold, tellThenAsk } from './tell-then-ask.ts';
import { answerTurnsAsked } from './turns-asked.ts';

export interface Manner {
  /** The day asked about when the words name none. */
  readonly on: Day;
  /** A group named outside the words, as by --group. */
  readonly group: string | null;
  /** Whether records are written, or only read back. */
  readonly write: boolean;
  /** Whether an answer is noted as advice given, so that it can be asked about later; where people read it, not scripts. */
  readonly notes?: boolean | undefined;
}

const sayChoices = (flock: Flock, readings: readonly Reading[]): readonly Token[] =>
  readings.map(({ topic }, at) => ({ t: 'choice', n: at + 1, text: offerOf(flock.book, topic) }));

/** What a line that was turned away may be meant for all the same. */
const sayNearest = (flock: Flock, nearest: readonly Reading[]): readonly Token[] =>
  nearest.length === 0
    ? [{ t: 'next', text: 'Say "help" for all that can be asked and told.' }]
    : [
        ...sayChoices(flock, nearest),
        {
          t: 'next',
          text: 'If one of these is meant, say its number; "help" shows all that can be asked and told.',
        },
      ];

const outside = (flock: Flock, words: string, heard: Heard, memory: Memory): Reply => ({
  tokens: [
    { t: 'claim', text: 'That is outside what I can answer.' },
    ...sayHazard(flock, heard),
    ...sayNearest(flock, heard.nearest),
  ],
  json: {
    ...emptyJson(words, nothingHeard),
    headline: 'That is outside what I can answer.',
    choices: heard.nearest.map(({ topic }) => ({ question: topic, says: offerOf(flock.book, topic) })),
  },
  record: null,
  exit: exits.notUnderstood,
  memory: { ...memory, choices: heard.nearest },
});

/** The caution for a danger that the words speak of. */
const sayHazard = (flock: Flock, heard: Heard): readonly Token[] => {
  const text = heard.hazard === undefined ? undefined : flock.book.words.hazards[heard.hazard];
  return text === undefined ? [] : [{ t: 'caution', text }];
};

const askWhich = (flock: Flock, words: string, heard: Heard, memory: Memory): Reply => ({
  tokens: [
    { t: 'claim', text: 'Which do you mean?' },
    ...sayHazard(flock, heard),
    ...sayChoices(flock, heard.readings),
    { t: 'next', text: 'Say the number.' },
  ],
  json: {
    ...emptyJson(words, nothingHeard),
    verdict: 'which',
    headline: 'Which do you mean?',
    choices: heard.readings.map(({ topic }) => ({ question: topic, says: offerOf(flock.book, topic) })),
  },
  record: null,
  exit: exits.notUnderstood,
  memory: { ...memory, choices: heard.readings },
});

const carryOut = async (
  flock: Flock,
  words: string,
  heard: Heard,
  reading: Reading,
  memory: Memory,
  manner: Manner,
): Promise<Reply> => {
  if (reading.topic.startsWith('tell:') && reading.supposing.length > 0)
    return askSupposing(flock, words, reading, manner.on, memory);
  if (reading.topic.startsWith('tell:'))
    return leaveByRecord(
      await tellReading(flock, words, heard, reading, memory, manner.write),
      memory.inside,
    );
  if (isAboutAnswers(reading.topic))
    return answerAbout({ flock, words, heard, reading, memory, on: manner.on, write: manner.write });
  if (reading.topic === 'sheet') return answerSheet(flock, words, reading, memory, manner.on);
  if (reading.topic === 'what-changed')
    return answerChanged({ flock, words, reading, memory, on: manner.on });
  const reply = await askReading(flock, words, heard, reading, manner.on, memory);
  if (manner.notes === true) await noteAdvice(flock, words, reply.memory);
  return reply;
};

/** What was told beside a question and not taken in; a record says so itself. */
const leftBeside = ({ topic, leftOut }: Reading): readonly Token[] =>
  leftOut === undefined || topic.startsWith('tell:') ? [] : [{ t: 'caution', text: sayLeftOut(leftOut) }];

const within = (reading: Reading, group: string | null): Reading =>
  group === null || reading.groups.length > 0 ? reading : { ...reading, groups: [group] };

/** Answers what was heard, or asks back which of its readings is meant. */
const answerHeard = async (
  flock: Flock,
  words: string,
  heard: Heard,
  memory: Memory,
  manner: Manner,
): Promise<Reply> => {
  const first = restingReading(flock, heard.readings);
  if (first === undefined) return outside(flock, words, heard, memory);
  if (!heard.sure) return askWhich(flock, words, heard, memory);
  const taken = { ...heard, readings: [first, ...heard.readings.filter((each) => each !== first)] };
  const reply = await carryOut(flock, words, taken, within(first, manner.group), memory, manner);
  return { ...reply, tokens: [...reply.tokens, ...leftBeside(first), ...sayHazard(flock, heard)] };
};

/** Answers one line. `memory` is what the conversation has left so far; the reply brings the next. */
export const turn = async (flock: Flock, words: string, memory: Memory, manner: Manner): Promise<Reply> => {
  const picked = chosen(words, memory);
  if (picked !== undefined) {
    const heard: Heard = { words, readings: [picked], sure: true, nearest: [] };
    return carryOut(flock, words, heard, within(picked, manner.group), memory, manner);
  }
  const offered = answerOffered(flock, words, memory);
  if (offered !== null) return offered;
  const turns = answerTurnsAsked(flock, words, memory);
  if (turns !== null) return turns;
  // What was asked back comes first: a place may answer it.
  const wish = memory.asking === null ? forecastWish(words) : null;
  if (wish !== null) return answerForecast(flock, words, wish, memory, manner.write);
  const about = aboutFor(flock, memory.heard, memory.asking, memory.asked);
  const right =
    memory.asking === null ? await answerPutRight(flock, words, about, memory, manner.write) : null;
  if (right !== null) return right;
  const heard =
    askedOfBook(flock, words, memory) ??
    readAsOwn(words, about, flock.lexicon) ??
    understand(words, about, flock.lexicon);
  // A danger is spoken of at once, not after a question about spelling.
  const meant = heard.sure || heard.hazard !== undefined ? null : askMeant(flock, words, about, memory);
  if (meant !== null) return meant;
  if (heard.told === undefined) return answerHeard(flock, words, heard, memory, manner);
  if (!manner.write || !flock.canWrite) return answerHeard(flock, words, supposeTold(heard), memory, manner);
  return tellThenAsk(flock, heard, memory, async (asked, after) =>
    answerHeard(flock, words, asked, after, manner),
  );
};
