/** "why not saturday", "why not 60 birds", "why not yes": the last question on that day, with that amount, or as it was, and what stood in the way. */
import type { Answer, Gives, Request, Supposition } from '../../engine/types.ts';
import { answerAsJson } from '../say/as-json.ts';
import { sayAllAssumed } from '../say/assumed.ts';
import { sayDay } from '../say/quantity.ts';
import type { Token } from '../say/tokens.ts';
import { missedBy, sayMonthAsked, sayWhyNot } from '../say/why-not.ts';
import type { Heard, Reading } from '../understand/types.ts';
import { askedOn, type Flock, speechFor } from './flock.ts';
import { heardAsJson } from './heard-as-json.ts';
import { exits, type Memory, type Reply, settled } from './reply.ts';
import { toSupposition } from './supposed-value.ts';

const verdicts: readonly (readonly [RegExp, Gives])[] = [
  [/\byes\b/i, 'yes'],
  [/\bno\b/i, 'no'],
];

const wishIn = (words: string): Gives | null =>
  verdicts.find(([pattern]) => pattern.test(words))?.[1] ?? null;

/** The month asked after, where the question takes one. */
const monthSupposed = (flock: Flock, question: string, { slots }: Reading): readonly Supposition[] => {
  const fact = flock.book.questions[question]?.takes.month;
  const { month } = slots;
  return fact === undefined || typeof month !== 'string'
    ? []
    : [{ what: { fact }, value: month, adds: false }];
};

/** The amount asked after, as what the question takes an amount for; none where it takes none. */
const amountSupposed = (flock: Flock, question: string, { slots }: Reading): readonly Supposition[] => {
  const takes = flock.book.questions[question]?.takes ?? {};
  const { system } = speechFor(flock);
  const said = [
    { slot: 'amount', value: slots.amount, unit: slots.unit },
    { slot: 'count', value: slots.n, unit: null },
    { slot: 'amount', value: slots.n, unit: null },
  ];
  for (const { slot, value, unit } of said) {
    const fact = takes[slot];
    if (fact === undefined || typeof value !== 'number') continue;
    const supposing = { what: slot, fact, value, unit: typeof unit === 'string' ? unit : null, adds: false };
    const over = toSupposition(flock.book, supposing, system);
    if (over !== null) return [over];
  }
  return [];
};

/** The last request, moved to the day and the amount that are asked after; null when neither is named. */
const requestFor = (flock: Flock, { request, question }: Answer, reading: Reading): Request | null => {
  const month = monthSupposed(flock, question, reading);
  const supposed = month.length > 0 ? month : amountSupposed(flock, question, reading);
  const groups = reading.groups.length > 0 ? reading.groups : request.groups;
  const isElsewhere = groups !== request.groups;
  if (reading.on === null && supposed.length === 0 && !isElsewhere) return null;
  const on = reading.on ?? request.moment.on;
  return {
    ...request,
    groups,
    moment: { ...request.moment, on },
    asked: askedOn(flock, on),
    // A span keeps its length only where it is asked anew: another day stands for itself.
    until: reading.on === null ? request.until : reading.until,
    supposing: [...supposed, ...request.supposing],
  };
};

const isOfMonth = (flock: Flock, request: Request | null): boolean => {
  const fact = request === null ? undefined : flock.book.questions[request.question]?.takes.month;
  return (
    fact !== undefined && request?.supposing.some(({ what }) => 'fact' in what && what.fact === fact) === true
  );
};

/** The reply to a line that asks why the last answer is not another one. */
export const answerWhyNot = async (
  flock: Flock,
  words: string,
  heard: Heard,
  reading: Reading,
  last: Answer,
  memory: Memory,
): Promise<Reply> => {
  const speech = speechFor(flock);
  const request = requestFor(flock, last, reading);
  const answer = request === null ? last : await flock.engine().ask(request);
  const { on } = answer.request.moment;
  // Elsewhere, what was missed here is asked after: "why not saturday" of a no asks for a yes.
  const [before] = last.parts;
  const missed = request === null || before === undefined ? null : missedBy(before);
  const wish = wishIn(String(reading.slots.not ?? '')) ?? missed;
  const assumed = sayAllAssumed(speech, answer.assumed);
  const when: readonly Token[] =
    on === flock.today ? [] : [{ t: 'heading', text: `For ${sayDay(on, speech.today)}` }];
  return {
    tokens: [
      ...when,
      ...(isOfMonth(flock, request) ? sayMonthAsked(speech, answer) : sayWhyNot(speech, answer, wish)),
      ...(assumed === null ? [] : [{ t: 'detail', text: assumed } as const]),
    ],
    json: answerAsJson(speech, words, heardAsJson(reading), answer),
    record: null,
    exit: exits.answered,
    memory: { ...settled(memory, memory.heard ?? heard), answer },
  };
};
