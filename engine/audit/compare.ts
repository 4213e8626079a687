/** The same question at two moments: what its answers do not have in common, and what made it so. */
import type { Depth } from '../ask/ask.ts';
import type { Day } from '../day.ts';
import type {
  Answer,
  Comparison,
  Difference,
  Doubt,
  Entry,
  Explained,
  Moment,
  Question,
  Request,
  Rulebook,
} from '../types.ts';
import { candidatesBetween } from './candidates.ts';
import { explainDifference } from './causes.ts';
import { differencesBetween, isFoundAhead, type Points, pointsOf, type Said } from './difference.ts';
import { narrowTo } from './narrow.ts';
import { type Replay, sortSuspects } from './suspects.ts';
import { undoCauses, type View } from './undo.ts';

/** Works a question out over a view, as far as said. */
export type Look = (view: View, request: Request, depth: Depth) => Promise<Answer>;

/** An earlier moment, with what is still known of the answer given then. */
export interface Earlier {
  readonly moment: Moment;
  /** The day on which it was asked, where the day asked about lay ahead of that. */
  readonly asked?: Day | undefined;
  /** Hash of the rules that held. */
  readonly rules: string;
  /** Those rules; null when they are not at hand. */
  readonly book: Rulebook | null;
  /** What was said then, from the log; null where nothing was logged. */
  readonly said: Said | null;
  /** Whether the lines that were there then have been edited since. */
  readonly isEdited: boolean;
}

export interface Comparing {
  /** The question, at the later moment. */
  readonly request: Request;
  readonly book: Rulebook;
  readonly earlier: Earlier;
  /** What the same words were heard as then, asked at the later moment; left out where they are heard the same. */
  readonly heard?: { readonly words: string; readonly request: Request } | undefined;
  /** Entries believed at the later moment and not at the earlier one, in file order. */
  readonly entries: readonly Entry[];
  /** Whether days that are found by looking ahead are compared too. */
  readonly withDays: boolean;
  /** Which differences are worth explaining. */
  readonly counts: (difference: Difference) => boolean;
}

interface Scope {
  readonly withDays: boolean;
  readonly withTasks: boolean;
  readonly depth: Depth;
}

/**
 * What of the answers has to be worked out: tasks only where the answer is a list of them, and a look ahead, which is dear,
 * only where a result of the question is a day found so.
 */
const scopeOf = (question: Question | undefined, withDays: boolean): Scope => {
  const ahead = withDays && (question?.results ?? []).some(isFoundAhead);
  const isList = question?.kind === 'list';
  return { withDays: ahead, withTasks: isList, depth: isList ? 'tasks' : ahead ? 'when' : 'verdict' };
};

/** The log holds no tasks, so what it says is compared without. */
const withoutTasks = (points: Points): Points =>
  new Map([...points].filter(([, { what }]) => what !== 'task'));

const pointsIn = ({ withDays, withTasks }: Omit<Scope, 'depth'>, said: Said, on: Day): Points =>
  withTasks ? pointsOf(said, withDays, on) : withoutTasks(pointsOf(said, withDays, on));

interface Before {
  readonly points: Points;
  readonly answer: Answer | null;
  readonly doubt: Doubt | null;
}

/**
 * What was said then. Replayed where the rules of then are at hand; an old rulebook may lack what this program asks of it,
 * and then it is as good as lost. What the log says outweighs what a replay says.
 */
const lookBefore = async (
  { earlier, book }: Comparing,
  request: Request,
  scope: Scope,
  look: Look,
): Promise<Before> => {
  const { moment, asked } = earlier;
  const replayed = async (rules: Rulebook): Promise<Answer> =>
    look({ moment, book: rules }, { ...request, moment, asked }, scope.depth);
  const logged =
    earlier.said === null ? null : pointsIn({ ...scope, withTasks: false }, earlier.said, moment.on);
  const answer = earlier.book === null ? null : await replayed(earlier.book).catch(() => null);
  if (answer === null) {
    // With nothing logged either, today's rules are all there is to go by.
    const points = logged ?? pointsIn(scope, await replayed(book), moment.on);
    return { points, answer, doubt: 'rules-not-kept' };
  }
  const points = pointsIn(scope, answer, moment.on);
  if (logged === null || differencesBetween(logged, withoutTasks(points)).length === 0)
    return { points, answer, doubt: null };
  return { points: logged, answer, doubt: earlier.isEdited ? 'file-edited' : 'program-changed' };
};

/** Compares, and explains every difference. Each cause has been tried by working the question out without it. */
export const compare = async (comparing: Comparing, look: Look): Promise<Comparison> => {
  const { request, book, earlier, entries, heard } = comparing;
  const asked = heard?.request ?? request;
  const scopeFor = ({ question }: Request, withDays = comparing.withDays): Scope =>
    scopeOf(book.questions[question], withDays);
  const scope = scopeFor(request);
  const now: View = { moment: request.moment, asked: request.asked, book };
  const answer = await look(now, request, scope.depth);
  const before = await lookBefore(comparing, asked, scopeFor(asked), look);
  const isLogOnly = before.doubt !== null && earlier.said !== null;
  const after = pointsIn({ ...scope, withTasks: scope.withTasks && !isLogOnly }, answer, request.moment.on);
  const differences = differencesBetween(before.points, after).filter(comparing.counts);

  const all = candidatesBetween({
    earlier,
    // Days that lie between what was heard then and what is heard now did not pass.
    later: asked,
    rules: earlier.rules,
    book,
    entries,
    heard: heard === undefined ? undefined : { words: heard.words, from: asked, to: request },
  }).filter((cause) => cause.kind !== 'rules' || before.answer !== null);
  const tasks = differences.flatMap(({ what, id }) => (what === 'task' ? [id] : []));
  const narrow = (view: View): View => ({
    ...view,
    book: narrowTo(view.book, (view.request ?? request).question, tasks),
  });
  const then: View = { moment: earlier.moment, asked: earlier.asked, book: earlier.book ?? book };
  const old = narrow({ ...then, request: asked });
  const known = new Map<string, Points>();
  const replay: Replay = async (undone, ahead) => {
    const key = JSON.stringify([all.flatMap((each, at) => (undone.includes(each) ? [at] : [])), ahead]);
    const done = known.get(key);
    if (done !== undefined) return done;
    const view = undoCauses(narrow({ ...now, request }), old, undone);
    const of = view.request ?? request;
    const own = scopeFor(of, ahead);
    const again: Request = { ...of, moment: view.moment, asked: view.asked };
    const points = pointsIn(own, await look(view, again, own.depth), view.moment.on);
    known.set(key, points);
    return points;
  };

  const answers = before.answer === null ? [answer] : [answer, before.answer];
  const suspects = await sortSuspects(all, answers, differences, replay);
  const explained: Explained[] = [];
  for (const each of differences)
    explained.push(
      await explainDifference(
        each,
        before.points,
        suspects,
        replay,
        explained.flatMap(({ causes }) => (causes.length === 0 ? [] : [causes])),
      ),
    );
  return {
    question: request.question,
    earlier: earlier.moment,
    later: request.moment,
    before: [...before.points.values()],
    after: [...after.values()],
    was: before.answer,
    is: answer,
    differences: explained,
    doubt: before.doubt,
    replays: known.size + 2,
  };
};
