/** A question understood → its answer, said and as data. */
import type { Day } from '../../engine/day.ts';
import type { Problem } from '../../engine/problem.ts';
import type { Answer } from '../../engine/types.ts';
import { drawPicture } from '../picture/draw.ts';
import { joinPictures } from '../picture/picture.ts';
import { sayAnswer } from '../say/answer.ts';
import { answerAsJson, emptyJson, jointVerdict } from '../say/as-json.ts';
import { listed } from '../say/listed.ts';
import { sayProblem } from '../say/problem.ts';
import type { Speech } from '../say/speech.ts';
import type { Token } from '../say/tokens.ts';
import type { Heard, Reading, Supposing } from '../understand/types.ts';
import { type Flock, speechFor } from './flock.ts';
import { heardAsJson } from './heard-as-json.ts';
import { exits, type Memory, type Reply, settled } from './reply.ts';
import { toRequest } from './to-request.ts';

const sayAssumptions = (reading: Reading): Token[] =>
  reading.assumed.length === 0 ? [] : [{ t: 'detail', text: `Heard it ${listed(reading.assumed)}.` }];

const sayLeftOut = (leftOut: readonly Supposing[]): Token[] =>
  leftOut.map(({ what }) => ({
    t: 'detail',
    text: `I cannot suppose the ${what} here; this is the answer as things are.`,
  }));

const saySupposed = (reading: Reading, leftOut: readonly Supposing[]): Token[] => {
  const taken = reading.supposing.filter((each) => !leftOut.includes(each));
  const words = taken.map(
    ({ what, value, unit, adds }) =>
      `${what} ${adds && Number(value) > 0 ? '+' : ''}${value}${unit === null ? '' : ` ${unit}`}`,
  );
  return words.length === 0 ? [] : [{ t: 'heading', text: `Supposing ${listed(words)}; nothing is written` }];
};

/** Broken lines that an answer has to do without. */
const sayProblems = (problems: readonly Problem[], answer: Answer): Token[] => {
  const groups = new Set(
    answer.parts.flatMap((part) => (part.group === null ? [] : [`group:${part.group}`])),
  );
  const touching = problems.filter(
    ({ grave, touches }) =>
      grave && touches.some((each) => !each.startsWith('group:') || groups.size === 0 || groups.has(each)),
  );
  return touching.map((problem) => ({ t: 'detail', text: `Left out: ${sayProblem(problem)[0] ?? ''}` }));
};

const nobody = (speech: Speech, words: string, heard: Heard, reading: Reading, memory: Memory): Reply => {
  const tell = speech.book.records.arrive?.example ?? null;
  const text = 'There are no birds on record yet.';
  return {
    tokens: [
      { t: 'claim', text },
      { t: 'unknown', text: 'What birds came, how many, and when did they hatch?', tell },
    ],
    json: {
      ...emptyJson(words, heardAsJson(reading)),
      verdict: 'cannot-say',
      headline: text,
      unknown: [{ fact: 'alive', ask: 'What birds came, how many, and when did they hatch?', tell }],
    },
    record: null,
    exit: exits.cannotSay,
    memory: { ...memory, heard, answer: null, choices: [] },
  };
};

/** Answers a reading that is a question of the rulebook. `on` is the day asked about when the words name none. */
export const askReading = async (
  flock: Flock,
  words: string,
  heard: Heard,
  reading: Reading,
  on: Day,
  memory: Memory,
): Promise<Reply> => {
  const speech = speechFor(flock);
  const { request, leftOut } = toRequest(flock, reading, on, speech.system);
  const answer = await flock.engine().ask(request);
  const isAlone = flock.engine().state(request.moment).groups.length === 0;
  if (isAlone && answer.parts.every((part) => part.steps.length === 0 && part.headline === null)) {
    return nobody(speech, words, heard, reading, memory);
  }
  const pictures = answer.pictures.map((each) => drawPicture(speech, each, flock.isAscii));
  const json = answerAsJson(
    speech,
    words,
    { ...heardAsJson(reading, request.until), on: reading.on ?? request.moment.on },
    answer,
  );
  return {
    tokens: [
      ...saySupposed(reading, leftOut),
      ...sayAnswer(speech, answer),
      ...pictures.map((picture): Token => ({ t: 'picture', ...picture })),
      ...sayAssumptions(reading),
      ...sayLeftOut(leftOut),
      ...sayProblems(answer.problems, answer),
    ],
    json: { ...json, picture: joinPictures(pictures) },
    record: null,
    exit: jointVerdict(answer.parts) === 'cannot-say' ? exits.cannotSay : exits.answered,
    memory: { ...settled(memory, heard), answer },
  };
};
