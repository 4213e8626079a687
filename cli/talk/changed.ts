/** "What changed": the answer given before, or the whole round, set beside an earlier moment, with the causes. */
import { addDays, type Day } from '../../engine/day.ts';
import type { Audit, Since } from '../../engine/index.ts';
import type { Advice, Comparison, Difference, Request, Rulebook } from '../../engine/types.ts';
import { sayChanged } from '../say/changed.ts';
import { changedAsJson } from '../say/changed-as-json.ts';
import { capital } from '../say/phrase.ts';
import { sayDay } from '../say/quantity.ts';
import type { Speech } from '../say/speech.ts';
import type { Token } from '../say/tokens.ts';
import type { Reading } from '../understand/types.ts';
import { type Flock, speechFor } from './flock.ts';
import { hearAlone, isHeardSame } from './hear-alone.ts';
import { exits, type Memory, type Reply } from './reply.ts';
import { sayOnly } from './say-only.ts';
import { adviceMeant, askedAgain, dayOfLine, endOf, lastAdvice, markIn, momentOf } from './since.ts';

interface Asked {
  readonly flock: Flock;
  readonly words: string;
  readonly reading: Reading;
  readonly memory: Memory;
  /** The day asked about when the words name none. */
  readonly on: Day;
}

/** One question to be compared. */
interface Pair {
  readonly request: Request;
  readonly since: Since;
}

/** What is compared, and since when as it is said; or why there is nothing to compare. */
type Found =
  | { readonly pairs: readonly Pair[]; readonly since: string; readonly isRound: boolean }
  | { readonly refused: string };

const asking = ({ flock, on }: Asked, question: string): Request => ({
  question,
  groups: [],
  moment: { on, asOf: flock.asOf, lines: null },
  until: null,
  supposing: [],
});

/** What is looked at when no question is named: the daily round, and every question that is answered yes or no. */
export const roundQuestions = ({ questions }: Rulebook): readonly string[] =>
  Object.values(questions)
    .filter(({ kind, gathers }) => gathers.length > 0 || kind === 'yes-no')
    .sort((one, other) => other.gathers.length - one.gathers.length)
    .map(({ id }) => id);

/** The question of the last answer, or the round, set beside a moment. */
const besideMoment = (asked: Asked, since: Since, said: string): Found => {
  const { answer } = asked.memory;
  if (answer === null)
    return {
      pairs: roundQuestions(asked.flock.book).map((question) => ({
        request: asking(asked, question),
        since,
      })),
      since: said,
      isRound: true,
    };
  const { request } = answer;
  // A question about another day than today stays about that day.
  const earlier = since.moment.on;
  const on = request.moment.on === asked.on ? earlier : request.moment.on;
  return {
    pairs: [
      {
        request,
        since: { ...since, moment: { ...since.moment, on }, asked: on > earlier ? earlier : undefined },
      },
    ],
    since: said,
    isRound: false,
  };
};

/** Advice beside what its words ask today: most often the same, unless they are heard otherwise by now. */
const besideAdvice = ({ flock, on }: Asked, advice: Advice, said: string): Found => {
  const request = askedAgain(advice, on, flock.asOf);
  const now = advice.alone === true ? hearAlone(flock, advice.asked, advice.at.slice(0, 10)) : null;
  const since = momentOf(advice);
  const pair: Pair =
    now === null || isHeardSame(now, advice.request)
      ? { request, since }
      : {
          request: askedAgain({ ...advice, request: now }, on, flock.asOf),
          since: { ...since, heard: { words: advice.asked, request } },
        };
  return { pairs: [pair], since: said, isRound: false };
};

const find = (asked: Asked, speech: Speech, log: readonly Advice[]): Found => {
  const { flock, words, reading, memory, on } = asked;
  const lines = flock.engine().lines;
  const mark = markIn(words, reading, on);
  const day = (of: Day): string => sayDay(of, flock.today);
  switch (mark.kind) {
    case 'ref': {
      const advice = log.findLast(({ ref }) => ref === mark.ref);
      if (advice !== undefined) return besideAdvice(asked, advice, day(mark.on));
      if (mark.lines > lines.length)
        return { refused: `That reference speaks of ${mark.lines} lines; there are ${lines.length}.` };
      const moment = { on: mark.on, asOf: null, lines: mark.lines };
      return besideMoment(asked, { moment, advice: null, rules: mark.rules }, day(mark.on));
    }
    case 'line': {
      const written = dayOfLine(lines, mark.line);
      if (written === null) return { refused: `There is no record on line ${mark.line} to go back to.` };
      const moment = { on: written, asOf: null, lines: mark.line };
      return besideMoment(asked, { moment, advice: null }, `line ${mark.line}, ${day(written)}`);
    }
    case 'days': {
      for (const each of mark.days) {
        const advice = adviceMeant(speech, log, reading, each, memory.answer?.question ?? null);
        if (advice !== null) return besideAdvice(asked, advice, day(each));
      }
      const [first = addDays(on, -1)] = mark.days;
      return besideMoment(asked, endOf(first), day(first));
    }
    case 'last': {
      const advice = memory.answer === null ? null : lastAdvice(log, memory.answer);
      if (advice !== null) return besideAdvice(asked, advice, day(advice.at.slice(0, 10)));
      return besideMoment(asked, endOf(addDays(on, -1)), day(addDays(on, -1)));
    }
  }
};

/** In the round only tasks and verdicts are news; the amounts of the day follow from the day. */
const isNews = ({ what }: Difference): boolean => what === 'verdict' || what === 'task';

const compareAll = async (audit: Audit, { pairs, isRound }: Extract<Found, { pairs: unknown }>) => {
  const compared: { readonly comparison: Comparison; readonly wasSaid: boolean }[] = [];
  for (const { request, since } of pairs) {
    const wanted = isRound ? { withDays: false, counts: isNews } : {};
    compared.push({
      comparison: await audit.compare(request, since, wanted),
      wasSaid: since.advice !== null,
    });
  }
  return compared;
};

const sayDamaged = (damaged: readonly number[]): Token[] =>
  damaged.length === 0
    ? []
    : [
        {
          t: 'detail',
          text: `Left out of the advice log, as it cannot be read: line ${damaged.join(', ')}.`,
        },
      ];

/** Answers what has changed. Nothing is written, and nothing is noted as advice. */
export const answerChanged = async (asked: Asked): Promise<Reply> => {
  const { flock } = asked;
  const speech = speechFor(flock);
  const engine = flock.engine();
  const audit = engine.audit(flock.advice?.rulesFolder ?? null);
  const log = audit.log();
  const found = find(asked, speech, log.advice);
  if ('refused' in found)
    return sayOnly(asked, [{ t: 'claim', text: found.refused }], exits.cannotSay, { verdict: 'cannot-say' });
  const compared = await compareAll(audit, found);
  let reasons = 0;
  const told = compared.flatMap(({ comparison, wasSaid }) => {
    const tokens = sayChanged(speech, comparison, { lines: engine.lines, wasSaid }, reasons + 1);
    reasons += tokens.filter(({ t }) => t === 'reason').length;
    const offer = flock.book.questions[comparison.question]?.offer;
    const heading: Token[] =
      tokens.length > 0 && compared.length > 1 && offer !== undefined
        ? [{ t: 'heading', text: capital(offer) }]
        : [];
    return [...heading, ...tokens];
  });
  const nothing: Token = { t: 'claim', text: `Nothing has changed since ${found.since}.` };
  const since: Token = { t: 'heading', text: `What has changed since ${found.since}` };
  return sayOnly(
    asked,
    [...(told.length === 0 ? [nothing] : [since, ...told]), ...sayDamaged(log.damaged)],
    exits.answered,
    {
      difference: {
        changes: compared.map(({ comparison }) => changedAsJson(speech, engine.lines, comparison)),
      },
    },
  );
};
