/** How much a bird of a kind eats from hatch to any age, before this flock's own records, its growth and the weather are counted. */
import type { Reader } from '../define.ts';
import { weightLine, weightLineFigures } from '../growth/line.ts';
import { type Point, smoothLine } from '../sums/smooth-line.ts';

const daysInWeek = 7;

/** Figures behind `intakeLine`; a fact that draws one declares them. */
export const intakeFigures = [
  'feed/eaten-by-age',
  'feed/home-share',
  'feed/per-live-weight',
  'feed/per-live-weight-later',
  'feed/upkeep',
  'feed/upkeep-power',
  ...weightLineFigures,
];

const weeks = (first: number, last: number): number[] => Array.from({ length: last - first + 1 }, (_, index) => first + index);

/** Published feed by age, less what birds at home eat below it. */
const pointsByAge = (read: Reader, sexes: string): Point[] => {
  const eaten = read.along('feed/eaten-by-age', [sexes]);
  const share = read.figure('feed/home-share');
  const [first, last] = read.spanOf('feed/eaten-by-age', [sexes]);
  return weeks(first, last).map((week) => [week * daysInWeek, eaten(week) * share]);
};

/** Live weight at each age times the feed that has gone into a unit of it by then. */
const pointsByWeight = (read: Reader, kind: string, weightAt: (age: number) => number): Point[] => {
  const young = read.along('feed/per-live-weight');
  const later = read.along('feed/per-live-weight-later', [kind]);
  const [first, grown] = read.spanOf('feed/per-live-weight');
  const [, last] = read.spanOf('feed/per-live-weight-later', [kind]);
  return weeks(first, last).map((week) => [
    week * daysInWeek,
    weightAt(week * daysInWeek) * (week <= grown ? young(week) : later(week)),
  ]);
};

/**
 * Feed eaten from hatch to an age in days, kg a bird: a smooth line through the weekly points, and past the last of them
 * day by day as upkeep of the weight then reached and what its gain costs. The cost of gain is that of the table's
 * last day, so that the line has no step where the table ends.
 */
export const intakeLine = (read: Reader, kind: string, sexes: string): ((age: number) => number) | undefined => {
  const weightAt = weightLine(read, kind, sexes);
  if (weightAt === undefined) return undefined;
  const points = kind === 'fast' ? pointsByAge(read, sexes) : pointsByWeight(read, kind, weightAt);
  const line = smoothLine(points);
  const end = points.at(-1)?.[0] ?? 0;
  const power = read.figure('feed/upkeep-power');
  const rate = read.figure('feed/upkeep');
  const upkeep = (age: number): number => rate * weightAt(age) ** power;
  const gain = (age: number): number => Math.max(0, weightAt(age + 1) - weightAt(age));
  const lastGain = gain(end - 1);
  const perGain = lastGain === 0 ? 0 : Math.max(0, (line(end) - line(end - 1) - upkeep(end - 1)) / lastGain);
  return (age) => {
    let eaten = line(Math.min(age, end));
    for (let day = end; day < age; day += 1) eaten += Math.min(1, age - day) * (upkeep(day) + perGain * gain(day));
    return eaten;
  };
};
