/** The audit of one ledger: advice noted as it is given, looked back on, compared with now, and gone through day by day. */
import type { Depth } from '../ask/ask.ts';
import type { Day } from '../day.ts';
import type {
  Advice,
  Answer,
  Bearing,
  Comparison,
  Difference,
  Entry,
  Moment,
  Request,
  Rulebook,
  Turning,
} from '../types.ts';
import { adviceFileOf, appendAdvice, keepRules, keptRules, readAdviceFile } from './advice-file.ts';
import { type AdviceLog, adviceOf } from './advice-line.ts';
import { bearingOf } from './bearing.ts';
import { type Comparing, compare, type Earlier, type Look } from './compare.ts';
import { auditSpan } from './span.ts';

/** What the audit needs to know of the ledger it is about. */
export interface Grounds {
  readonly book: Rulebook;
  /** Path of the ledger. */
  readonly file: string;
  readonly lines: number;
  readonly look: Look;
  /** The entries believed at a moment, in file order, also those taken back. */
  readonly believed: (moment: Moment) => readonly Entry[];
  /** Fingerprint of the first so many lines. */
  readonly printOf: (lines: number) => string;
}

/** An earlier moment to compare with, and the advice given then where it is on the log. */
export interface Since {
  readonly moment: Moment;
  readonly advice: Advice | null;
  /** The day on which it was asked, where the day asked about lay ahead of that and no advice says so. */
  readonly asked?: Day | undefined;
  /** Hash of the rules of then, where it is known without a log. */
  readonly rules?: string | undefined;
  /** What the same words were heard as then, where that is not what they are heard as now; about the day that it is now. */
  readonly heard?: Comparing['heard'];
}

/** What of a comparison is wanted: by default every difference, first days too. */
export type Wanted = Partial<Pick<Comparing, 'withDays' | 'counts'>>;

export interface Audit {
  /** The question as asked now, and as it was answered then: what differs, and which causes made it so. */
  compare(request: Request, since: Since, wanted?: Wanted): Promise<Comparison>;
  /** Every day of a span on which one of the questions was answered otherwise than the day before, by the differences that count. */
  span(
    questions: readonly string[],
    from: Day,
    to: Day,
    counts?: (each: Difference) => boolean,
  ): Promise<readonly Turning[]>;
  /** What one line does to the answers of these questions, found by leaving it out. */
  bearing(line: number, questions: readonly string[], moment: Moment): Promise<Bearing>;
  /** Gives an answer that is on the log once more; null when its rules are not at hand or no longer fit this program. */
  replay(advice: Advice): Promise<Answer | null>;
  /** The advice given so far, oldest first. */
  log(): AdviceLog;
  /** Notes an answer as given, and whether the words alone were heard so; false when it could not be written, which is no reason to keep the answer back. */
  note(answer: Answer, asked: string, at: string, alone?: boolean): Promise<boolean>;
}

/** A look that works nothing out twice, for as long as one span is gone through. */
const remembering = (look: Look): Look => {
  const known = new Map<Rulebook, Map<string, Promise<Answer>>>();
  return (view, request, deep) => {
    const ofBook = known.get(view.book) ?? new Map<string, Promise<Answer>>();
    known.set(view.book, ofBook);
    const key = JSON.stringify([view.moment, request, deep]);
    const found = ofBook.get(key) ?? look(view, request, deep);
    ofBook.set(key, found);
    return found;
  };
};

/**
 * Opens the audit of a ledger.
 * @param rulesFolder where rulebooks that gave advice are kept; null keeps none and knows none but today's
 */
export const openAudit = (grounds: Grounds, rulesFolder: string | null): Audit => {
  const { book, file, look, believed } = grounds;
  const rulesWith = (hash: string): Rulebook | null =>
    hash === book.hash ? book : rulesFolder === null ? null : keptRules(rulesFolder, hash);

  const earlierOf = ({
    moment,
    advice,
    asked = advice?.request.asked,
    rules = advice?.rules ?? book.hash,
  }: Since): Earlier => ({
    moment,
    asked,
    rules,
    book: rulesWith(rules),
    said: advice,
    isEdited: advice !== null && grounds.printOf(advice.request.moment.lines ?? 0) !== advice.print,
  });

  const compareWith = (
    by: Look,
    request: Request,
    since: Since,
    { withDays = true, counts = () => true }: Wanted = {},
  ): Promise<Comparison> => {
    const before = new Set(believed(since.moment).map(({ line }) => line));
    const entries = believed(request.moment).filter(({ line }) => !before.has(line));
    const { heard } = since;
    return compare({ request, book, earlier: earlierOf(since), heard, entries, withDays, counts }, by);
  };

  const asking = (question: string, moment: Moment): Request => ({
    question,
    groups: [],
    moment,
    until: null,
    supposing: [],
  });

  const depthOf = (question: string): Depth =>
    book.questions[question]?.kind === 'list' ? 'tasks' : 'verdict';

  return {
    compare: (request, since, wanted) => compareWith(look, request, since, wanted),
    span: (questions, from, to, counts = () => true) => {
      const by = remembering(look);
      return auditSpan(
        { questions, from, to },
        {
          answer: (question, moment) => by({ moment, book }, asking(question, moment), depthOf(question)),
          compare: (question, then, now) =>
            compareWith(
              by,
              asking(question, now),
              { moment: then, advice: null },
              { withDays: false, counts },
            ),
          counts,
        },
      );
    },
    bearing: (line, questions, moment) =>
      bearingOf({
        line,
        questions,
        believed: believed(moment),
        answer: (question, without) => {
          const at = { ...moment, without };
          return look({ moment: at, book }, asking(question, at), depthOf(question));
        },
      }),
    replay: async ({ request, rules }) => {
      const of = rulesWith(rules);
      // An old rulebook may lack what this program asks of it.
      return of === null
        ? null
        : look({ moment: request.moment, book: of }, request, 'all').catch(() => null);
    },
    log: () => readAdviceFile(adviceFileOf(file)),
    note: async (answer, asked, at, alone) => {
      if (rulesFolder !== null) keepRules(rulesFolder, book);
      const { lines, printOf } = grounds;
      return appendAdvice(adviceFileOf(file), adviceOf(answer, asked, at, lines, printOf(lines), alone));
    },
  };
};
