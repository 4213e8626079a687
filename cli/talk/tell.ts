/** Records told in plain words → read back, completed one question at a time, then written. */
import { type Appended, freeName } from '../../engine/index.ts';
import { emptyJson, type JsonAnswer } from '../say/as-json.ts';
import { sayLeftOut } from '../say/left-out.ts';
import { sayCells } from '../say/own-record.ts';
import { capital } from '../say/phrase.ts';
import { sayProblem } from '../say/problem.ts';
import { askField, sayRecord } from '../say/record.ts';
import type { Speech } from '../say/speech.ts';
import type { Token } from '../say/tokens.ts';
import { signTyped } from '../understand/find/currency.ts';
import type { Draft, Heard, Reading } from '../understand/types.ts';
import { figureHints, figureTold } from './figure-told.ts';
import { currencyOf, type Flock, momentOn, speechFor } from './flock.ts';
import { heardAsJson } from './heard-as-json.ts';
import { exits, type Memory, type Reply, settled } from './reply.ts';

/** Birds that arrive under a name that is taken get the next free one, so that last year's flock keeps its own. */
const named = (flock: Flock, draft: Draft): Draft => {
  const { group } = draft.fields;
  if (draft.kind !== 'arrive' || typeof group !== 'string') return draft;
  const taken = flock.engine().state(momentOn(flock, flock.today)).groups;
  return { ...draft, fields: { ...draft.fields, group: freeName(taken, group) } };
};

const readBack = (speech: Speech, drafts: readonly Draft[]): string =>
  drafts.map((draft) => sayRecord(speech, draft)).join(' ');

const assumedOf = (reading: Reading): Token[] =>
  reading.assumed.map((text) => ({ t: 'detail', text: `Taken for granted: ${text}.` }));

const leftOutOf = ({ leftOut = [] }: Reading): { readonly t: 'caution'; readonly text: string }[] =>
  leftOut.length === 0 ? [] : [{ t: 'caution', text: sayLeftOut(leftOut) }];

const jsonFor = (words: string, reading: Reading, more: Partial<JsonAnswer>): JsonAnswer => ({
  ...emptyJson(words, heardAsJson(reading)),
  ...more,
});

/** Asks for the first field that is missing; the records wait until it is said. */
const askBack = (
  flock: Flock,
  words: string,
  heard: Heard,
  reading: Reading,
  drafts: readonly Draft[],
  memory: Memory,
): Reply => {
  const speech = speechFor(flock);
  const lacking = drafts.find((draft) => draft.missing.length > 0) as Draft;
  const field = lacking.missing[0] ?? '';
  const ask = askField(speech, lacking.kind, field);
  const said = readBack(
    speech,
    drafts.filter((draft) => draft.missing.length === 0),
  );
  return {
    tokens: [
      { t: 'claim', text: ask },
      ...sayCells(speech, lacking, field),
      ...figureHints(flock, lacking, field, words).map(
        (text): Token => ({ t: 'detail', text: `${capital(text)}.` }),
      ),
      {
        t: 'detail',
        text: said === '' ? 'Nothing is written yet.' : `Nothing is written yet; this waits: ${said}`,
      },
      ...leftOutOf(reading),
    ],
    json: jsonFor(words, reading, {
      verdict: 'cannot-say',
      headline: ask,
      unknown: [{ fact: field, ask, tell: speech.book.records[lacking.kind]?.example ?? null }],
    }),
    record: { recorded: null, says: said, asks: ask, problems: [] },
    exit: exits.cannotSay,
    memory: {
      ...memory,
      heard,
      choices: [],
      asking: { draft: lacking, field },
      waiting: drafts.filter((draft) => draft !== lacking),
    },
  };
};

const problemLines = (written: Appended): string[] =>
  written.problems.flatMap((problem) => [...sayProblem(problem)]);

const refused = (
  speech: Speech,
  words: string,
  heard: Heard,
  reading: Reading,
  drafts: readonly Draft[],
  written: Appended,
  memory: Memory,
): Reply => {
  const says = readBack(speech, drafts);
  const grave = written.problems.filter((problem) => problem.grave);
  const reasons = grave.map((problem) => sayProblem(problem)[0]?.replace(/^.*?column \d+: /, '') ?? '');
  return {
    tokens: [
      { t: 'claim', text: 'Not written.' },
      { t: 'detail', text: `I heard: ${says}` },
      ...reasons.map((text): Token => ({ t: 'caution', text })),
    ],
    json: jsonFor(words, reading, { verdict: 'cannot-say', headline: `Not written: ${reasons.join(' ')}` }),
    record: { recorded: null, says, asks: null, problems: problemLines(written) },
    exit: exits.problems,
    memory: settled(memory, heard),
  };
};

const accepted = (
  speech: Speech,
  words: string,
  heard: Heard,
  reading: Reading,
  drafts: readonly Draft[],
  written: Appended,
  memory: Memory,
): Reply => {
  const says = readBack(speech, drafts);
  const doubts = written.problems.filter(
    ({ grave, code }) => !grave && (code === 'doubtful-value' || code === 'repeated-line'),
  );
  return {
    tokens: [
      { t: 'claim', text: `Written: ${says}` },
      ...assumedOf(reading),
      ...leftOutOf(reading),
      ...doubts.map(
        (problem): Token => ({
          t: 'caution',
          text: sayProblem(problem)[0]?.replace(/^.*?take note: /, '') ?? '',
        }),
      ),
    ],
    json: jsonFor(words, reading, { verdict: 'recorded', headline: says }),
    record: {
      recorded: written.lines.map((line): object => JSON.parse(line)),
      says,
      asks: null,
      problems: [...problemLines(written), ...leftOutOf(reading).map(({ text }) => text)],
    },
    exit: exits.answered,
    memory: settled(memory, heard),
  };
};

/** Reads records back that cannot be written; `why` is undefined for the demo, where nobody expects it. */
const readOnly = (
  speech: Speech,
  words: string,
  heard: Heard,
  reading: Reading,
  drafts: readonly Draft[],
  memory: Memory,
  why: string | undefined,
): Reply => {
  const says = readBack(speech, drafts);
  if (why !== undefined)
    return {
      tokens: [
        { t: 'claim', text: 'Not written.' },
        { t: 'detail', text: `I heard: ${says}` },
        { t: 'caution', text: why },
      ],
      json: jsonFor(words, reading, { verdict: 'cannot-say', headline: `Not written: ${why}` }),
      record: { recorded: null, says, asks: null, problems: [why] },
      exit: exits.problems,
      memory: settled(memory, heard),
    };
  return {
    tokens: [
      { t: 'claim', text: `I heard: ${says}` },
      {
        t: 'detail',
        text: 'Nothing is written, as this is the demo. To start your own flock file: penside new',
      },
      ...leftOutOf(reading),
    ],
    json: jsonFor(words, reading, { verdict: 'recorded', headline: says }),
    record: { recorded: null, says, asks: null, problems: [] },
    exit: exits.answered,
    memory: settled(memory, heard),
  };
};

/** The first sum typed with another sign than the usual one says in which money the keeper reckons. */
const currencyTold = (flock: Flock, words: string): readonly Draft[] => {
  const sign = signTyped(words);
  return sign === undefined || sign === '$' || currencyOf(flock) !== undefined
    ? []
    : [{ kind: 'setting', on: flock.today, fields: { what: 'currency', value: sign }, missing: [] }];
};

/** Takes a reading that is one or several records. With `write` false they are only read back. */
export const tellReading = async (
  flock: Flock,
  words: string,
  heard: Heard,
  reading: Reading,
  memory: Memory,
  write: boolean,
): Promise<Reply> => {
  const speech = speechFor(flock, words);
  const drafts = [...reading.entries, ...memory.waiting, ...currencyTold(flock, words)].map((draft) =>
    figureTold(flock, named(flock, draft), words, reading),
  );
  if (drafts.some((draft) => draft.missing.length > 0))
    return askBack(flock, words, heard, reading, drafts, memory);
  if (!write) {
    const says = readBack(speech, drafts);
    return {
      tokens: [
        { t: 'claim', text: `I heard: ${says}` },
        ...assumedOf(reading),
        ...leftOutOf(reading),
        { t: 'detail', text: 'Nothing is written by asking. To write it, use: penside tell' },
      ],
      json: jsonFor(words, reading, { verdict: 'recorded', headline: says }),
      record: { recorded: null, says, asks: null, problems: [] },
      exit: exits.answered,
      memory: settled(memory, heard),
    };
  }
  if (!flock.canWrite) return readOnly(speech, words, heard, reading, drafts, memory, flock.readOnly);
  const written = await flock.record(drafts.map(({ kind, on, fields }) => ({ kind, on, ...fields })));
  return written.isWritten
    ? accepted(speech, words, heard, reading, drafts, written, memory)
    : refused(speech, words, heard, reading, drafts, written, memory);
};
