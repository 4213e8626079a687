/** Questions about the answers and the ledger themselves: why, where from, help, undo. */
import { printOf } from '../../engine/index.ts';
import { emptyJson, type JsonAnswer } from '../say/as-json.ts';
import { sayHelp } from '../say/help.ts';
import { plain } from '../say/plain.ts';
import { sayProblem } from '../say/problem.ts';
import { sayRecord } from '../say/record.ts';
import { namedIn, sayAnswerSources, sayFigureInFull, sayRuleInFull } from '../say/rule-source.ts';
import type { Token } from '../say/tokens.ts';
import { sayWhy, sayWorking } from '../say/why.ts';
import type { Heard, Reading } from '../understand/types.ts';
import { type Flock, speechFor } from './flock.ts';
import { heardAsJson } from './heard-as-json.ts';
import { exits, type Memory, type Reply, settled } from './reply.ts';

interface About {
  readonly flock: Flock;
  readonly words: string;
  readonly heard: Heard;
  readonly reading: Reading;
  readonly memory: Memory;
  /** Whether a record may be written. */
  readonly write: boolean;
}

/** A reply that only talks; the first token is its headline and the rest its steps. */
const talk = (
  { words, reading, memory }: About,
  tokens: readonly Token[],
  exit: number,
  verdict: JsonAnswer['verdict'] = 'list',
): Reply => {
  const lines = plain(tokens, Number.POSITIVE_INFINITY).filter((line) => line !== '');
  return {
    tokens,
    json: {
      ...emptyJson(words, heardAsJson(reading)),
      verdict,
      headline: lines[0] ?? '',
      steps: lines.slice(1),
      ref: memory.answer?.ref ?? null,
    },
    record: null,
    exit,
    memory: { ...memory, choices: [] },
  };
};

const nothingToExplain: readonly Token[] = [
  { t: 'claim', text: 'There is no answer to explain yet.' },
  { t: 'next', text: 'Ask something first, such as "can they go out", then "why".' },
];

const why = (about: About): Reply => {
  const { flock, memory, reading } = about;
  const { answer } = memory;
  if (answer === null) return talk(about, nothingToExplain, exits.cannotSay, 'cannot-say');
  const speech = speechFor(flock);
  const n = Number(reading.slots.n);
  if (!Number.isInteger(n)) return talk(about, sayWhy(speech, answer), exits.answered);
  const reasons = answer.parts.flatMap((part) => part.reasons);
  const reason = reasons.find((each) => each.n === n);
  if (reason === undefined) {
    const range =
      reasons.length === 0
        ? 'It has no numbered reasons.'
        : `Its reasons are numbered 1 to ${reasons.length}.`;
    return talk(
      about,
      [{ t: 'claim', text: `The last answer has no reason ${n}. ${range}` }],
      exits.notUnderstood,
      'cannot-say',
    );
  }
  return talk(about, sayWorking(speech, answer, flock.engine().lines, reason), exits.answered);
};

const ruleSource = (about: About): Reply => {
  const { flock, words, memory } = about;
  const speech = speechFor(flock);
  const { rules, figures } = namedIn(flock.book, words);
  const named = [
    ...rules.flatMap((rule) => sayRuleInFull(speech, rule)),
    ...figures.flatMap((figure) => sayFigureInFull(speech, figure)),
  ];
  if (named.length > 0) return talk(about, named, exits.answered);
  return memory.answer === null
    ? talk(about, nothingToExplain, exits.cannotSay, 'cannot-say')
    : talk(about, sayAnswerSources(speech, memory.answer), exits.answered);
};

const undo = async (about: About): Promise<Reply> => {
  const { flock, memory, heard } = about;
  const speech = speechFor(flock);
  const last = flock.engine().standing().at(-1);
  if (last === undefined)
    return talk(
      about,
      [{ t: 'claim', text: 'There is nothing on record to take back.' }],
      exits.cannotSay,
      'cannot-say',
    );
  const { kind: _kind, on: _on, written: _written, by: _by, ...fields } = JSON.parse(last.raw);
  const says = sayRecord(speech, { kind: last.kind, on: last.on, fields });
  if (!about.write || !flock.canWrite) {
    return talk(
      about,
      [
        { t: 'claim', text: `This would be taken back: ${says}` },
        { t: 'detail', text: 'Nothing is written.' },
      ],
      exits.answered,
    );
  }
  const written = await flock.record([
    { kind: 'undo', on: flock.today, line: last.line, print: printOf(last.raw) },
  ]);
  const reply = written.isWritten
    ? talk(
        about,
        [
          { t: 'claim', text: `Taken back: ${says}` },
          { t: 'detail', text: 'The line stays in the file, marked as undone.' },
        ],
        exits.answered,
        'recorded',
      )
    : talk(
        about,
        [
          { t: 'claim', text: 'Not taken back.' },
          ...written.problems.map((each): Token => ({ t: 'caution', text: sayProblem(each)[0] ?? '' })),
        ],
        exits.problems,
        'cannot-say',
      );
  return {
    ...reply,
    record: {
      recorded: written.isWritten ? written.lines.map((line): object => JSON.parse(line)) : null,
      says,
      asks: null,
      problems: written.problems.flatMap((each) => [...sayProblem(each)]),
    },
    memory: settled(memory, heard),
  };
};

const handlers: Readonly<Record<string, (about: About) => Reply | Promise<Reply>>> = {
  why,
  'rule-source': ruleSource,
  undo,
  help: (about) => talk(about, sayHelp(about.flock.book), exits.answered),
};

/** Whether a topic is about the answers themselves. */
export const isAboutAnswers = (topic: string): boolean => Object.hasOwn(handlers, topic);

export const answerAbout = async (about: About): Promise<Reply> => {
  const handle = handlers[about.reading.topic];
  if (handle === undefined) throw new Error(`nothing handles ${about.reading.topic}`);
  return handle(about);
};
