/** A question understood → its answer, said and as data. */
import type { Day } from '../../engine/day.ts';
import type { Problem } from '../../engine/problem.ts';
import type { Answer } from '../../engine/types.ts';
import { drawPicture, pictureToken } from '../picture/draw.ts';
import { joinPictures } from '../picture/picture.ts';
import { sayAnswer } from '../say/answer.ts';
import { answerAsJson, emptyJson, jointVerdict } from '../say/as-json.ts';
import { listed } from '../say/listed.ts';
import { sayOwn, sayOwnLeftOut } from '../say/own.ts';
import { sayProblem } from '../say/problem.ts';
import type { Speech } from '../say/speech.ts';
import type { Token } from '../say/tokens.ts';
import { sayWhatIf } from '../say/what-if.ts';
import { whatIfAsJson } from '../say/what-if-as-json.ts';
import type { Heard, Reading } from '../understand/types.ts';
import { type Flock, speechFor } from './flock.ts';
import { heardAsJson } from './heard-as-json.ts';
import { insideAfter, markSupposed, readInside } from './inside.ts';
import { exits, type Memory, type Reply, settled } from './reply.ts';
import { isSupposedIn, type LeftOut } from './supposed.ts';
import { toRequest } from './to-request.ts';

const sayAssumptions = (reading: Reading): Token[] =>
  reading.assumed.length === 0 ? [] : [{ t: 'detail', text: `Heard it ${listed(reading.assumed)}.` }];

const sayLeftOut = (leftOut: readonly LeftOut[]): Token[] =>
  leftOut.map(({ why }) => ({ t: 'detail', text: why }));

/** What was heard, less what could not be supposed: a line that follows on shall not suppose it again. */
const withoutLeftOut = (heard: Heard, leftOut: readonly LeftOut[]): Heard => ({
  ...heard,
  readings: heard.readings.map((reading) => ({
    ...reading,
    supposing: reading.supposing.filter((each) => !leftOut.some(({ supposing }) => supposing === each)),
  })),
});

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
  const planning = speech.book.firstRun?.planning;
  return {
    tokens: [
      { t: 'claim', text },
      { t: 'unknown', text: 'What birds came, how many, and when did they hatch?', tell },
      ...(planning === undefined ? [] : [{ t: 'next', text: planning } as const]),
    ],
    json: {
      ...emptyJson(words, heardAsJson(reading)),
      verdict: 'cannot-say',
      headline: text,
      unknown: [{ fact: 'alive', ask: 'What birds came, how many, and when did they hatch?', tell }],
    },
    record: null,
    exit: exits.cannotSay,
    memory: { ...memory, heard, asked: heard, answer: null, choices: [] },
  };
};

/** Answers a reading that is a question of the rulebook. `on` is the day asked about when the words name none. */
export const askReading = async (
  flock: Flock,
  words: string,
  heard: Heard,
  alone: Reading,
  on: Day,
  memory: Memory,
): Promise<Reply> => {
  const speech = speechFor(flock, words);
  const reading = readInside(alone, memory.inside);
  const { request, whatIf, named, leftOut } = toRequest(flock, reading, on, speech.system);
  const compared = whatIf.length === 0 ? null : await flock.engine().askWhatIf(request, whatIf);
  const answer = compared?.after ?? (await flock.engine().ask(request));
  const inside = insideAfter(
    alone,
    memory.inside,
    named.map(({ supposing }) => supposing),
  );
  const isAlone = flock.engine().state(request.moment).groups.length === 0;
  if (isAlone && answer.parts.every((part) => part.steps.length === 0 && part.headline === null)) {
    return nobody(speech, words, heard, reading, memory);
  }
  const asked = withoutLeftOut(heard, leftOut);
  const pictures = answer.pictures.map((each) => drawPicture(speech, each, flock.isAscii));
  const json = answerAsJson(
    speech,
    words,
    { ...heardAsJson(reading, request.until), on: reading.on ?? request.moment.on },
    answer,
  );
  return {
    tokens: [
      ...markSupposed(named, inside.length > 0 && memory.inside.length === 0),
      ...sayAnswer(speech, answer),
      ...(compared === null ? [] : sayWhatIf(speech, compared)),
      ...answer.pictures.map((each) => pictureToken(speech, each, flock.isAscii)),
      ...sayAssumptions(reading),
      ...sayLeftOut(leftOut.filter(({ supposing }) => !isSupposedIn(memory.inside, supposing))),
      ...sayOwn(speech, answer),
      ...sayProblems(answer.problems, answer),
      ...sayOwnLeftOut(flock.ownProblems ?? []),
    ],
    json: {
      ...json,
      picture: joinPictures(pictures),
      difference: compared === null ? null : whatIfAsJson(speech, compared),
    },
    record: null,
    exit: jointVerdict(answer.parts) === 'cannot-say' ? exits.cannotSay : exits.answered,
    memory: {
      ...settled(memory, asked),
      asked,
      answer,
      inside,
    },
  };
};
