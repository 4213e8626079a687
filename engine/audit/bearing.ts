/** What one line of the ledger does: the values worked out from it, and the answers that rest on it, found by leaving it out. */
import type { Answer, Bearing, Entry, Moved, Resting, Revised, Step } from '../types.ts';
import { differencesBetween, pointsOf } from './difference.ts';

/** How the bearing of a line is found out. */
export interface Weighing {
  readonly line: number;
  readonly questions: readonly string[];
  /** Everything believed, in file order, undos and corrections with the line that they mean. */
  readonly believed: readonly Entry[];
  /** The answer of a question with these lines left out. */
  readonly answer: (question: string, without: readonly number[]) => Promise<Answer>;
}

const isAbout = (line: number): ((entry: Entry) => boolean) => {
  const kinds = ['undo', 'correct'];
  return ({ kind, fields }) => kinds.includes(kind) && fields.line === line;
};

/** Revisions of a line that no later undo takes back. */
const revisionsOf = (believed: readonly Entry[], line: number): readonly Revised[] =>
  believed.filter(isAbout(line)).flatMap((entry): Revised[] => {
    const isUndone = revisionsOf(believed, entry.line).some(({ how }) => how === 'undone');
    return isUndone ? [] : [{ line: entry.line, how: entry.kind === 'undo' ? 'undone' : 'corrected' }];
  });

const keyOf = ({ fact, group }: Step): string => JSON.stringify([fact, group]);

const readsFrom = (lines: readonly number[]): ((step: Step) => boolean) => {
  return ({ entries }) => entries.some(({ line }) => lines.includes(line));
};

/** Values that came straight from the lines and are others without them. */
const movedIn = ({ is, without }: Resting, lines: readonly number[]): readonly Moved[] => {
  const [before, after] = [without, is].map(
    ({ workings }) => new Map(workings.map((step) => [keyOf(step), step])),
  );
  const direct = [...is.workings, ...without.workings].filter(readsFrom(lines));
  return [...new Set(direct.map(keyOf))].flatMap((key): Moved[] => {
    const [now, then] = [after?.get(key), before?.get(key)];
    const step = now ?? then;
    if (step === undefined || now?.value === then?.value) return [];
    const { fact, group, unit } = step;
    return [{ fact, group, unit, value: now?.value ?? null, without: then?.value ?? null }];
  });
};

/** Kinds of entry that may turn an answer of which no step says that it was read: what they set is simply there. */
const unread = ['arrive', 'figure', 'undo', 'correct'];

/** Weighs a line by asking every question with and without it. An undo or a correction counts with the line it is about. */
export const bearingOf = async ({ line, questions, believed, answer }: Weighing): Promise<Bearing> => {
  const own = believed.find((entry) => entry.line === line);
  const isRevision = own?.kind === 'undo' || own?.kind === 'correct';
  const of = isRevision && typeof own.fields.line === 'number' ? own.fields.line : null;
  const lines = of === null ? [line] : [line, of];
  const resting: Resting[] = [];
  // What is only ever read makes no difference where it was not; asking again without it would only cost time.
  const isOnlyRead = own !== undefined && !unread.includes(own.kind);
  for (const question of questions) {
    const is = await answer(question, []);
    if (isOnlyRead && !is.workings.some(readsFrom(lines))) continue;
    const without = await answer(question, [line]);
    const differences = differencesBetween(pointsOf(without, false), pointsOf(is, false));
    // A line that cannot be read is said of the answers that it makes doubtful.
    const isRead =
      [...is.workings, ...without.workings].some(readsFrom(lines)) ||
      is.problems.some(({ at }) => at.line === line);
    if (isRead || differences.length > 0) resting.push({ question, is, without, differences });
  }
  const moved = new Map(
    resting.flatMap((each) => movedIn(each, lines)).map((each) => [`${each.fact} ${each.group}`, each]),
  );
  return {
    line,
    of,
    revised: revisionsOf(believed, line),
    moved: [...moved.values()],
    answers: resting.toSorted(
      (one, other) => Number(one.differences.length === 0) - Number(other.differences.length === 0),
    ),
  };
};
