/** Questions about the answers and the ledger themselves: why, where from, help, undo. */
import type { Day } from '../../engine/day.ts';
import { printOf } from '../../engine/index.ts';
import type { Entry } from '../../engine/types.ts';
import { sayHelp } from '../say/help.ts';
import { sayProblem } from '../say/problem.ts';
import { asKept, sayRecord } from '../say/record.ts';
import type { Token } from '../say/tokens.ts';
import type { Heard, Reading } from '../understand/types.ts';
import { askReading } from './ask.ts';
import { type Flock, speechFor } from './flock.ts';
import { lastTold } from './in-order-told.ts';
import { leaveInside } from './inside.ts';
import { exits, type Memory, type Reply, settled } from './reply.ts';
import { answerRuleSource } from './rule-source.ts';
import { sayOnly } from './say-only.ts';
import { explainWhy } from './why.ts';
import { answerWhyNot } from './why-not.ts';

interface About {
  readonly flock: Flock;
  readonly words: string;
  readonly heard: Heard;
  readonly reading: Reading;
  readonly memory: Memory;
  /** The day asked about when the words name none. */
  readonly on: Day;
  /** Whether a record may be written. */
  readonly write: boolean;
}

const nothingToExplain: readonly Token[] = [
  { t: 'claim', text: 'There is no answer to explain yet.' },
  { t: 'next', text: 'Ask something first, such as "can they go out", then "why".' },
];

const why = (about: About): Reply | Promise<Reply> => {
  const { flock, memory, reading } = about;
  const { answer } = memory;
  if (answer === null) return sayOnly(about, nothingToExplain, exits.cannotSay, { verdict: 'cannot-say' });
  if (reading.slots.not !== undefined)
    return answerWhyNot(flock, about.words, about.heard, reading, answer, memory);
  const { lines } = flock.engine();
  const { tokens, isFound } = explainWhy(speechFor(flock), answer, lines, about.words);
  return isFound
    ? sayOnly(about, tokens, exits.answered)
    : sayOnly(about, tokens, exits.notUnderstood, { verdict: 'cannot-say' });
};

/** Leaves a what-if; the last question is answered once more, as things are. */
const leave = async (about: About): Promise<Reply> => {
  const { flock, memory, words } = about;
  const isSupposing = (memory.heard?.readings[0]?.supposing.length ?? 0) > 0;
  if (memory.inside.length === 0 && !isSupposing)
    return sayOnly(
      about,
      [{ t: 'claim', text: 'Nothing is being supposed: this is how things are.' }],
      exits.answered,
    );
  const left = leaveInside(memory);
  const [reading] = left.heard?.readings ?? [];
  const said: Token = { t: 'claim', text: 'Nothing is supposed any more.' };
  if (left.heard === null || reading === undefined || memory.answer === null)
    return { ...sayOnly(about, [said], exits.answered), memory: { ...left, choices: [] } };
  const again = await askReading(flock, words, left.heard, { ...reading, stays: false }, about.on, left);
  return { ...again, tokens: [said, ...again.tokens] };
};

/** Whose record it was, where more than one tell them. */
const toldBy = (flock: Flock, { by }: Entry): readonly Token[] => {
  const everyone = new Set(
    flock
      .engine()
      .believed()
      .flatMap((entry) => entry.by ?? []),
  );
  return everyone.size > 1 && by !== null ? [{ t: 'detail', text: `It was written by ${by}.` }] : [];
};

const undo = async (about: About): Promise<Reply> => {
  const { flock, memory, heard } = about;
  // Inside a what-if, what was said last is a supposition: that is what is taken back.
  if (memory.inside.length > 0 && memory.heard?.readings[0]?.topic.startsWith('tell:') === false)
    return leave(about);
  const speech = speechFor(flock);
  const last = lastTold(flock.engine().standing(), flock.told?.() ?? []);
  if (last === undefined)
    return sayOnly(
      about,
      [{ t: 'claim', text: 'There is nothing on record to take back.' }],
      exits.cannotSay,
      {
        verdict: 'cannot-say',
      },
    );
  // As it stands by now: an amount in it may have been put right since.
  const says = sayRecord(speech, { ...last, fields: asKept(last) });
  if (about.write && flock.readOnly !== undefined) {
    const tokens: Token[] = [
      { t: 'claim', text: 'Not taken back.' },
      { t: 'detail', text: `This would be taken back: ${says}` },
      { t: 'caution', text: flock.readOnly },
    ];
    return sayOnly(about, tokens, exits.problems, { verdict: 'cannot-say' });
  }
  if (!about.write || !flock.canWrite) {
    return sayOnly(
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
    ? sayOnly(
        about,
        [
          { t: 'claim', text: `Taken back: ${says}` },
          ...toldBy(flock, last),
          { t: 'detail', text: 'The line stays in the file, marked as undone.' },
        ],
        exits.answered,
        { verdict: 'recorded' },
      )
    : sayOnly(
        about,
        [
          { t: 'claim', text: 'Not taken back.' },
          ...written.problems.map((each): Token => ({ t: 'caution', text: sayProblem(each)[0] ?? '' })),
        ],
        exits.problems,
        { verdict: 'cannot-say' },
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
  'rule-source': ({ flock, words, reading, memory }) => answerRuleSource(flock, words, reading, memory),
  undo,
  'as-things-are': leave,
  help: (about) => sayOnly(about, sayHelp(about.flock.book), exits.answered),
};

/** Whether a topic is about the answers themselves. */
export const isAboutAnswers = (topic: string): boolean => Object.hasOwn(handlers, topic);

export const answerAbout = async (about: About): Promise<Reply> => {
  const handle = handlers[about.reading.topic];
  if (handle === undefined) throw new Error(`nothing handles ${about.reading.topic}`);
  return handle(about);
};
