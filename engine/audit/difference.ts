/** What two answers to the same question do not have in common, and by how much. */
import { type Day, daysBetween, isDay } from '../day.ts';
import type { Difference, Part, Point, Result, Value } from '../types.ts';

/** The points of an answer by what names them, in the order in which they are said. */
export type Points = ReadonlyMap<string, Point>;

/** What an answer has to have to be compared: all of it, or what was logged of it. */
export interface Said {
  readonly parts: readonly (Pick<Part, 'group' | 'verdict' | 'rule'> & Partial<Pick<Part, 'steps'>>)[];
  readonly results: readonly Result[];
}

/** What names a point in both answers. */
export const keyOf = ({ what, id, group }: Pick<Point, 'what' | 'id' | 'group'>): string =>
  JSON.stringify([what, id, group]);

/** A first day is found by looking ahead; an answer without that says nothing of it. */
export const isFoundAhead = ({ fact }: Pick<Point, 'fact'>): boolean => fact === 'when';

const partPoints = ({ group, verdict, rule, steps = [] }: Said['parts'][number]): Point[] => [
  { what: 'verdict', id: 'verdict', fact: null, group, value: verdict, unit: null },
  ...(rule === null
    ? []
    : [{ what: 'rule', id: 'rule', fact: null, group, value: rule, unit: null } as const]),
  ...steps.map((step): Point => {
    const due = step.at === 'dated' ? step.by : null;
    const unit = due === null ? null : due.includes('T') ? 'date-time' : 'date';
    return { what: 'task', id: step.rule, fact: null, group: step.group, value: due ?? true, unit };
  }),
];

/** What a first day is worth that is the very day asked about: the same on every day on which it can be said. */
const atOnce = 'at once';

const resultPoint = ({ id, fact, group, value, unit }: Result, on: Day | undefined): Point =>
  isFoundAhead({ fact }) && value === on
    ? { what: 'result', id, fact, group, value: atOnce, unit: null }
    : { what: 'result', id, fact, group, value, unit };

/**
 * The points of an answer: verdicts and rules by group, tasks, and results; those found by looking ahead only on request.
 * @param on the day asked about, so that a first day can be told from "at once"
 */
export const pointsOf = ({ parts, results }: Said, withDays: boolean, on?: Day): Points => {
  const points = [...parts.flatMap(partPoints), ...results.map((each) => resultPoint(each, on))];
  return new Map(points.filter((each) => withDays || !isFoundAhead(each)).map((each) => [keyOf(each), each]));
};

const sizeOf = (from: Value | null, to: Value | null): number | null => {
  if (typeof from === 'number' && typeof to === 'number') return to - from;
  const areDays = typeof from === 'string' && typeof to === 'string' && isDay(from) && isDay(to);
  return areDays ? daysBetween(from, to) : null;
};

const weights: Readonly<Record<Point['what'], number>> = { verdict: 0, rule: 1, result: 2, task: 3 };

/** Every point that is not the same in both, verdicts first. Another rule behind another verdict is no difference of its own. */
export const differencesBetween = (before: Points, after: Points): readonly Difference[] => {
  const found = [...new Set([...before.keys(), ...after.keys()])].flatMap((key): Difference[] => {
    const [old, now] = [before.get(key), after.get(key)];
    const point = now ?? old;
    if (point === undefined || old?.value === now?.value) return [];
    const [from, to] = [old?.value ?? null, now?.value ?? null];
    const { value: _, ...named } = point;
    const unit = now?.unit ?? old?.unit ?? null;
    return [{ ...named, unit, from, to, size: sizeOf(from, to) }];
  });
  const turned = new Set(found.filter(({ what }) => what === 'verdict').map(({ group }) => group));
  return found
    .filter(({ what, group }) => what !== 'rule' || !turned.has(group))
    .sort((one, other) => weights[one.what] - weights[other.what]);
};
