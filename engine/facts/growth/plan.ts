/** The plan line: how heavy a bird of this kind and sex is expected to be at an age, before any of its flock was weighed. */
import { daysBetween } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { settingNumber } from '../setting.ts';
import { smoothLine } from '../sums/smooth-line.ts';

/** Live weight in kg at an age in days. */
export type Curve = (age: number) => number;

/** What a fact must declare to use `planCurve`. */
export const planNeeds = ['growth-line', 'sexes'];
export const planFigures = [
  'growth/published-weight',
  'growth/derived-weight',
  'growth/sex-gap',
  'growth/plan-share',
];

/** The row for kinds that the tables do not have. */
const ownLine = 'own';
const daysInWeek = 7;

const published = 'growth/published-weight';
const derived = 'growth/derived-weight';

/**
 * A table of weights by week as a line smooth in the logarithm, so that early growth by the share is not flattened; a
 * week that the table leaves out stands on the straight line between its neighbours.
 * Drawn when it is first asked for, since the line beyond a published table often never is, and read at `now` (age in
 * days) first, so that the weight on record as used is today's.
 */
const weekly = (read: Reader, id: string, branch: readonly string[], now: number): Curve => {
  const draw = (): Curve => {
    const at = read.along(id, branch);
    at(now / daysInWeek);
    const [first, last] = read.spanOf(id, branch);
    const weeks = Array.from({ length: last - first + 1 }, (_, index) => first + index);
    return smoothLine(weeks.map((week) => [week * daysInWeek, Math.log(at(week))]));
  };
  let line: Curve | undefined;
  return (age) => {
    line ??= draw();
    return Math.exp(line(age));
  };
};

/** Published weights as far as they go, then the derived line's growth. */
const publishedCurve = (read: Reader, branch: readonly string[], now: number, beyond: Curve): Curve => {
  const curve = weekly(read, published, branch, now);
  const [, lastWeek] = read.spanOf(published, branch);
  const end = lastWeek * daysInWeek;
  return (age) => (age <= end ? curve(age) : (curve(end) * beyond(age)) / beyond(end));
};

/** The derived line of a flock of both sexes, apart by the gap between the sexes. */
const derivedCurve = (read: Reader, sexes: string, shape: Curve): Curve => {
  const gap = read.along('growth/sex-gap', [sexes]);
  return (age) => shape(age) * gap(age / daysInWeek);
};

/** How a described kind compares with the line whose shape it borrows: its weight at the age the keeper gave, 1 when none was. */
const describedShare = (read: Reader, line: string, shape: Curve): number => {
  if (line !== ownLine) return 1;
  const weight = settingNumber(read, 'own-kind-weight');
  const age = settingNumber(read, 'own-kind-age');
  return weight === undefined || age === undefined ? 1 : weight / shape(age);
};

/**
 * The plan line of any group, for facts of the whole flock. Ages before the hatch count as 0; `now` is the age in days
 * whose weights are put on record as used. The fact must declare `planFigures`.
 */
export const planCurveFor = (read: Reader, line: string, sexes: string, now = 0): Curve => {
  const shape = weekly(read, derived, [line], now);
  const isPublished = read.maybeFigure(published, [line, sexes, Math.max(0, now / daysInWeek)]) !== undefined;
  const potential = isPublished
    ? publishedCurve(read, [line, sexes], now, shape)
    : derivedCurve(read, sexes, shape);
  const share = read.along('growth/plan-share', [line]);
  const described = describedShare(read, line, shape);
  return (age) => {
    const at = Math.max(0, age);
    return potential(at) * share(at / daysInWeek) * described;
  };
};

/** The plan line of the group asked about. The fact must declare `planNeeds` and `planFigures`. */
export const planCurve = (read: Reader): Curve =>
  planCurveFor(read, read.text('growth-line'), read.text('sexes'), daysBetween(read.group.hatched, read.on));

export const planFacts = [
  defineFact({
    id: 'growth-line',
    unit: null,
    needs: ['kind'],
    figures: [derived],
    compute: (read) => {
      const kind = read.text('kind');
      if (kind !== ownLine && read.maybeFigure(derived, [kind, 0]) !== undefined) return kind;
      const isDescribed =
        settingNumber(read, 'own-kind-weight') !== undefined &&
        settingNumber(read, 'own-kind-age') !== undefined;
      if (!isDescribed && read.group.weighings.length === 0) return undefined;
      read.assume(isDescribed ? 'own-kind-shape' : 'own-kind-by-weighing');
      return ownLine;
    },
  }),
  defineFact({
    id: 'table-weight',
    unit: 'kg',
    needs: ['age', ...planNeeds],
    figures: planFigures,
    compute: (read) => planCurve(read)(read.number('age')),
  }),
];
