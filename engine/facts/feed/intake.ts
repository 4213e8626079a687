/** How much a bird of a kind eats from hatch to any age, before its flock's growth, own records and the weather are counted. */
import type { Reader } from '../define.ts';
import { type Curve, planCurveFor, planFigures } from '../growth/plan.ts';
import { type Point, smoothLine } from '../sums/smooth-line.ts';

const daysInWeek = 7;

/** Feed eaten from hatch to an age in days, kg a bird. */
export type IntakeLine = (age: number) => number;

/** Figures behind `intakeLine`; a fact that draws one declares them. */
export const intakeFigures = [
  ...planFigures,
  'feed/eaten-by-age',
  'feed/home-share',
  'feed/per-live-weight',
  'feed/per-live-weight-later',
  'feed/upkeep',
  'feed/upkeep-power',
];

/** Every week between two keys of a table, and those keys. */
const weeks = ([first, last]: readonly [number, number]): number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

/** Published feed by age, times the share of it that birds at home eat. */
const pointsByAge = (read: Reader, sexes: string, now: number): Point[] => {
  const eaten = read.along('feed/eaten-by-age', [sexes]);
  eaten(now / daysInWeek);
  const share = read.figure('feed/home-share');
  return weeks(read.spanOf('feed/eaten-by-age', [sexes])).map((week) => [week * daysInWeek, eaten(week) * share]);
};

/** Live weight at each age, times the feed that has gone into a unit of it by then. */
const pointsByWeight = (read: Reader, line: string, weightAt: Curve, now: number): Point[] => {
  const young = read.along('feed/per-live-weight');
  const later = read.along('feed/per-live-weight-later', [line]);
  const [first, grown] = read.spanOf('feed/per-live-weight');
  (now <= grown * daysInWeek ? young : later)(now / daysInWeek);
  const [, last] = read.spanOf('feed/per-live-weight-later', [line]);
  return weeks([first, last]).map((week) => {
    const age = week * daysInWeek;
    return [age, weightAt(age) * (week <= grown ? young(week) : later(week))];
  });
};

/**
 * The intake line of a kind that grows along a plan line: smooth through the weekly points, and past the last of them
 * day by day as upkeep of the weight then reached and what its gain costs. The cost of gain is that of the table's
 * last day, so that daily feed has no step where the table ends. `now` is the age whose table values are put on record.
 */
export const intakeLine = (read: Reader, line: string, sexes: string, now: number): IntakeLine => {
  const weightAt = planCurveFor(read, line, sexes, now);
  const points = line === 'fast' ? pointsByAge(read, sexes, now) : pointsByWeight(read, line, weightAt, now);
  const byTable = smoothLine(points);
  const end = points.at(-1)?.[0] ?? 0;
  const power = read.figure('feed/upkeep-power');
  const rate = read.figure('feed/upkeep');
  const upkeep = (age: number): number => rate * weightAt(age) ** power;
  const gain = (age: number): number => Math.max(0, weightAt(age + 1) - weightAt(age));
  const lastGain = gain(end - 1);
  const forGain = byTable(end) - byTable(end - 1) - upkeep(end - 1);
  const perGain = lastGain === 0 ? 0 : Math.max(0, forGain / lastGain);
  return (age) => {
    let eaten = byTable(age);
    for (let day = end; day < age; day += 1) eaten += Math.min(1, age - day) * (upkeep(day) + perGain * gain(day));
    return eaten;
  };
};
