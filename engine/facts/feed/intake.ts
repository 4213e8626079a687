/** How much a bird of a kind eats from hatch to any age, before its flock's growth, own records and the weather are counted. */
import type { Reader } from '../define.ts';
import { type Curve, planCurveFor, planFigures } from '../growth/plan.ts';
import { type Point, smoothLine } from '../sums/smooth-line.ts';

const daysInWeek = 7;

/** Feed eaten from hatch to an age in days, kg a bird. */
export type IntakeLine = (age: number) => number;

export const perWeightFigures = ['feed/per-live-weight', 'feed/per-live-weight-later'];

/** Figures behind `intakeLine`; a fact that draws one declares them. */
export const intakeFigures = [
  ...planFigures,
  ...perWeightFigures,
  'feed/eaten-by-age',
  'feed/home-share',
  'feed/upkeep',
  'feed/upkeep-power',
];

const publishedPoints = (read: Reader, sexes: string, now: number): Point[] => {
  const eaten = read.along('feed/eaten-by-age', [sexes]);
  // The first age looked up is the one that goes on record as used.
  eaten(now / daysInWeek);
  return read.keysOf('feed/eaten-by-age', [sexes]).map((week) => [week * daysInWeek, eaten(week)]);
};

/** The published feed of a fast bird, kg from hatch to an age in days; level past the end of the table. */
export const publishedIntake = (read: Reader, sexes: string, now: number): IntakeLine =>
  smoothLine(publishedPoints(read, sexes, now));

/** Weeks of the two tables by weight that follow one another. */
const weighedWeeks = (read: Reader, line: string): readonly number[] => [
  ...read.keysOf('feed/per-live-weight'),
  ...read.keysOf('feed/per-live-weight-later', [line]),
];

/** Feed that has gone into a unit of live weight by an age in weeks, for birds slower than fast. */
export const feedPerWeight = (read: Reader, line: string, now: number): ((week: number) => number) => {
  const young = read.along('feed/per-live-weight');
  const later = read.along('feed/per-live-weight-later', [line]);
  const [, grown] = read.spanOf('feed/per-live-weight');
  const at = (week: number): number => (week <= grown ? young(week) : later(week));
  at(now / daysInWeek);
  return smoothLine(weighedWeeks(read, line).map((week) => [week, at(week)]));
};

/** Age in days at which the feed table of a line ends. */
export const tableEnd = (read: Reader, line: string, sexes: string): number => {
  const span =
    line === 'fast'
      ? read.spanOf('feed/eaten-by-age', [sexes])
      : read.spanOf('feed/per-live-weight-later', [line]);
  return span[1] * daysInWeek;
};

/** Published feed by age, times the share of it that birds at home eat. */
const pointsByAge = (read: Reader, sexes: string, now: number): Point[] => {
  const share = read.figure('feed/home-share');
  return publishedPoints(read, sexes, now).map(([age, eaten]) => [age, eaten * share]);
};

/** Live weight at each age, times the feed that has gone into a unit of it by then. */
const pointsByWeight = (read: Reader, line: string, weightAt: Curve, now: number): Point[] => {
  const perWeight = feedPerWeight(read, line, now);
  return weighedWeeks(read, line).map((week) => [
    week * daysInWeek,
    weightAt(week * daysInWeek) * perWeight(week),
  ]);
};

/** Feed past the end of a table, kg since then, day by day: upkeep of the weight reached and what its gain costs. */
const linePast = (read: Reader, weightAt: Curve, end: number, lastDay: number): IntakeLine => {
  const power = read.figure('feed/upkeep-power');
  const rate = read.figure('feed/upkeep');
  const upkeep = (age: number): number => rate * weightAt(age) ** power;
  const gain = (age: number): number => Math.max(0, weightAt(age + 1) - weightAt(age));
  const lastGain = gain(end - 1);
  // The cost of gain is that of the table's last day, so that daily feed has no step where the table ends.
  const perGain = lastGain === 0 ? 0 : Math.max(0, (lastDay - upkeep(end - 1)) / lastGain);
  const perDay = (age: number): number => upkeep(age) + perGain * gain(age);
  // Walks over a year ask for every day in turn, so each is added up once.
  const eaten = [0];
  return (age) => {
    const whole = Math.floor(age - end);
    for (let day = eaten.length; day <= whole; day += 1)
      eaten.push((eaten.at(-1) ?? 0) + perDay(end + day - 1));
    return (eaten[whole] ?? 0) + (age - end - whole) * perDay(end + whole);
  };
};

/**
 * The intake line of a kind that grows along a plan line: smooth through the weekly points of its table, then upkeep and
 * gain. `now` is the age in days whose table values are put on record.
 */
export const intakeLine = (read: Reader, line: string, sexes: string, now: number): IntakeLine => {
  const points =
    line === 'fast'
      ? pointsByAge(read, sexes, now)
      : pointsByWeight(read, line, planCurveFor(read, line, sexes, now), now);
  const byTable = smoothLine(points);
  const end = points.at(-1)?.[0] ?? 0;
  // Only drawn when it is needed, so that an answer within the table does not name figures from beyond it.
  let past: IntakeLine | undefined;
  return (age) => {
    if (age <= end) return byTable(age);
    past ??= linePast(read, planCurveFor(read, line, sexes, now), end, byTable(end) - byTable(end - 1));
    return byTable(end) + past(age);
  };
};
