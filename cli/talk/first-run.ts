/**
 * The interview of a keeper who begins: asks step by step and writes ordinary entries. Where it stands follows from the
 * ledger alone, so that it can be left and taken up again.
 */
import { printOf } from '../../engine/index.ts';
import type { Entry, FirstStep } from '../../engine/types.ts';
import { sayProblem } from '../say/problem.ts';
import { asKept, sayRecord } from '../say/record.ts';
import type { Token } from '../say/tokens.ts';
import type { Asking } from '../understand/types.ts';
import { isLost, isRefused, replyTo } from './first-run-hearing.ts';
import { askAgain, exampleFor, sayEnd, sayLost, sayStep, waysThrough } from './first-run-words.ts';
import { type Flock, speechFor } from './flock.ts';
import type { Memory } from './reply.ts';
import { type Manner, turn } from './turn.ts';

/** The interview between two lines: the step being asked, or null when it is over or left. */
export interface Interview {
  readonly at: FirstStep | null;
  readonly memory: Memory;
}

/** What is said, and how the interview stands after it. */
export interface Asked extends Interview {
  readonly tokens: readonly Token[];
}

const skips =
  /^\s*(skip( it| this)?|next|pass|none|no|nothing|not yet|(only|just) thinking|no idea|(i )?do ?n.?t know)\s*[.!]?\s*$/i;
const backs = /^\s*(go )?back\s*[.!]?\s*$/i;
const stops = /^\s*(stop|later|enough|not now)\s*[.!]?\s*$/i;

const stepsOf = (flock: Flock): readonly FirstStep[] => flock.book.firstRun?.steps ?? [];

/** Whether an entry is what a step asks for. */
const answersTo = (step: FirstStep, { kind, fields }: Pick<Entry, 'kind' | 'fields'>): boolean =>
  'setting' in step ? kind === 'setting' && fields.what === step.setting : kind === step.record;

const answerTo = (flock: Flock, step: FirstStep): Entry | undefined =>
  flock
    .engine()
    .standing()
    .findLast((entry) => answersTo(step, entry));

/** Whether the answers so far leave a step to be asked. */
const applies = (flock: Flock, step: FirstStep): boolean => {
  const isTold = (id: string): boolean =>
    stepsOf(flock).some((each) => each.id === id && answerTo(flock, each) !== undefined);
  return (
    (step.unless === undefined || !isTold(step.unless)) && (step.after === undefined || isTold(step.after))
  );
};

/** The next step that applies; what was told beside an earlier one is not asked for again. */
const stepAfter = (flock: Flock, from: number): FirstStep | null =>
  stepsOf(flock).find(
    (step, place) => place > from && applies(flock, step) && answerTo(flock, step) === undefined,
  ) ?? null;

/** The step behind the last one that the ledger answers: what was skipped before that stays skipped. */
const nextStep = (flock: Flock): FirstStep | null =>
  stepAfter(
    flock,
    stepsOf(flock).findLastIndex((step) => answerTo(flock, step) !== undefined),
  );

/** Whether the keeper is still beginning: the ledger holds nothing but what the interview itself writes, and a step is left. */
export const isBeginning = (flock: Flock): boolean =>
  flock.canWrite &&
  nextStep(flock) !== null &&
  flock
    .engine()
    .standing()
    .every((entry) => stepsOf(flock).some((step) => answersTo(step, entry)));

const askingFor = (flock: Flock, step: FirstStep): Asking =>
  'setting' in step
    ? {
        draft: { kind: 'setting', on: flock.today, fields: { what: step.setting }, missing: ['value'] },
        field: 'value',
      }
    : {
        draft: {
          kind: step.record,
          on: flock.today,
          fields: {},
          missing: Object.keys(flock.book.records[step.record]?.asks ?? {}),
        },
        field: step.field,
      };

/** Goes to a step: says it, and has the next line heard as its answer. */
const goTo = (flock: Flock, step: FirstStep | null, memory: Memory, before: readonly Token[]): Asked => ({
  at: step,
  tokens: [...before, ...(step === null ? sayEnd(flock) : sayStep(flock, step))],
  memory: { ...memory, choices: [], waiting: [], asking: step === null ? null : askingFor(flock, step) },
});

/** Begins the interview, or takes it up where the ledger says it stopped. */
export const begin = (flock: Flock, memory: Memory): Asked => {
  const step = nextStep(flock);
  return goTo(flock, step, memory, step === null ? [] : [waysThrough]);
};

const skip = (flock: Flock, step: FirstStep, memory: Memory): Asked => {
  // What was told before and is asked again after "back" was taken back then: nothing stands for this step.
  const next = stepAfter(flock, stepsOf(flock).indexOf(step));
  return goTo(flock, next, memory, [{ t: 'detail', text: step.skipped }]);
};

/** Takes back the answer to the step before, as an ordinary undoing, and asks that step again. */
const goBack = async (flock: Flock, step: FirstStep, memory: Memory): Promise<Asked> => {
  const begun = memory.asking !== null && Object.keys(memory.asking.draft.fields).length > 0;
  if ('record' in step && begun) return goTo(flock, step, memory, []);
  const place = stepsOf(flock).indexOf(step);
  const before = stepsOf(flock).findLast(
    (each, at) => at < place && (answerTo(flock, each) !== undefined || applies(flock, each)),
  );
  if (before === undefined) return goTo(flock, step, memory, [{ t: 'detail', text: 'This is the first.' }]);
  const answer = answerTo(flock, before);
  if (answer === undefined) return goTo(flock, before, memory, []);
  const says = sayRecord(speechFor(flock), { ...answer, fields: asKept(answer) });
  const undone = await flock.record([
    { kind: 'undo', on: flock.today, line: answer.line, print: printOf(answer.raw) },
  ]);
  return undone.isWritten
    ? goTo(flock, before, memory, [{ t: 'detail', text: `Taken back: ${says}` }])
    : goTo(
        flock,
        step,
        memory,
        undone.problems.map((each): Token => ({ t: 'caution', text: sayProblem(each)[0] ?? '' })),
      );
};

/** A bare number is meant in the unit of the answer that was shown. */
const withUnit = (flock: Flock, step: FirstStep, words: string): string => {
  const unit = /^[\d.,]+ ([a-z].*)$/i.exec(exampleFor(flock, step))?.[1];
  return unit !== undefined && /^[\d.,]+$/.test(words.trim()) ? `${words.trim()} ${unit}` : words;
};

/**
 * Takes a line while a step is being asked. What is no answer is dealt with as ever, a question answered, a record
 * written, and the step is asked again. An empty line skips.
 */
export const takeLine = async (
  flock: Flock,
  words: string,
  step: FirstStep,
  memory: Memory,
  manner: Manner,
): Promise<Asked> => {
  if (words.trim() === '' || skips.test(words)) return skip(flock, step, memory);
  if (backs.test(words)) return goBack(flock, step, memory);
  if (stops.test(words))
    return {
      at: null,
      memory: { ...memory, asking: null },
      tokens: [{ t: 'detail', text: 'Left here; what was told is written. "start" takes it up again.' }],
    };
  const before = answerTo(flock, step)?.line;
  const whole = withUnit(flock, step, words);
  const reply = await replyTo(flock, step, whole, memory, manner);
  if (answerTo(flock, step)?.line !== before) {
    const next = stepAfter(flock, stepsOf(flock).indexOf(step));
    const taken: readonly Token[] =
      whole === words ? [] : [{ t: 'detail', text: `"${words}" is taken as ${whole}.` }];
    return goTo(flock, next, reply.memory, [...reply.tokens, ...taken]);
  }
  const kept =
    memory.asking !== null && isAskedBy(step, memory.asking) ? memory.asking : askingFor(flock, step);
  if (isLost(reply) || isRefused(reply)) {
    const { choices } = reply.memory;
    const said = choices.length === 0 ? sayLost(flock, step, words, reply, kept) : null;
    return {
      at: step,
      tokens: said ?? [...reply.tokens, ...askAgain(flock, step, kept)],
      memory: { ...memory, choices, asking: kept },
    };
  }
  // Something was asked back, by the step's own record or by another: that comes first.
  if (reply.memory.asking !== null && reply.memory.asking !== memory.asking)
    return { at: step, tokens: reply.tokens, memory: reply.memory };
  return {
    at: step,
    tokens: [...reply.tokens, ...askAgain(flock, step, kept)],
    memory: { ...reply.memory, asking: kept },
  };
};

/** Whether what is asked for belongs to the step, and not to a record told in between. */
const isAskedBy = (step: FirstStep, { draft }: Asking): boolean =>
  'setting' in step ? draft.fields.what === step.setting : draft.kind === step.record;

/** Takes an answer to a step that was not asked in talk, as an option of the shell. */
export const answerStep = (flock: Flock, step: FirstStep, words: string, memory: Memory, manner: Manner) =>
  turn(flock, words, { ...memory, asking: askingFor(flock, step) }, manner);
