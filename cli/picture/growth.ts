/** Live weight against age: the line the flock is on, its range, and what was weighed. */
import type { Day } from '../../engine/day.ts';
import { addDays, daysBetween } from '../../engine/day.ts';
import { sayDay, sayValue } from '../say/quantity.ts';
import type { Speech } from '../say/speech.ts';
import { makeCanvas } from './canvas.ts';
import type { Draw } from './picture.ts';

/** Weights in kg, ages in days. */
export interface GrowthSeries {
  readonly from: Day;
  readonly to: Day;
  readonly today: Day;
  readonly ready: Day | null;
  /** Age, low end, best guess, high end. */
  readonly line: readonly (readonly [number, number, number, number])[];
  /** Age and mean weight. */
  readonly weighings: readonly (readonly [number, number])[];
}

const [rows, margin] = [10, 10];

const sayWeight = (speech: Speech, value: number): string =>
  sayValue(speech, { value, unit: 'kg' }, 'live-weight');

/** Low end, best guess and high end at an age, between the points of the line. */
const at = ({ line }: GrowthSeries, age: number): readonly [number, number, number] => {
  const behind = line.findIndex((each) => each[0] >= age);
  const [below, above] = [line[Math.max(0, behind - 1)], line[behind === -1 ? line.length - 1 : behind]];
  if (below === undefined || above === undefined) return [0, 0, 0];
  const share = above[0] > below[0] ? Math.min(1, (age - below[0]) / (above[0] - below[0])) : 1;
  const between = (index: 1 | 2 | 3): number => below[index] + share * (above[index] - below[index]);
  return [between(1), between(2), between(3)];
};

const sayGrowth = (speech: Speech, series: GrowthSeries, group: string | null): string => {
  const [low, middle, high] = at(series, daysBetween(series.from, series.today));
  const last = series.weighings.at(-1);
  const weighed =
    last === undefined
      ? 'none has been weighed'
      : `weighed ${series.weighings.length === 1 ? 'once' : `on ${series.weighings.length} days`}, last ${sayWeight(speech, last[1])} on ${sayDay(addDays(series.from, last[0]), speech.today)}`;
  const end = series.line.at(-1)?.[2] ?? middle;
  return `Growth of the ${group}: about ${sayWeight(speech, middle)} on ${sayDay(series.today, speech.today)}, between ${sayWeight(speech, low)} and ${sayWeight(speech, high)}; ${sayWeight(speech, end)} expected on ${sayDay(series.to, speech.today)}; ${weighed}.`;
};

export const drawGrowth: Draw<GrowthSeries> = (speech, series, group, { marks, width }) => {
  const columns = width - margin;
  const days = Math.max(1, daysBetween(series.from, series.to));
  const top = Math.max(
    ...series.line.map(([, , , high]) => high),
    ...series.weighings.map(([, mean]) => mean),
  );
  const canvas = makeCanvas(rows, columns);
  const rowOf = (weight: number): number => rows - 1 - Math.round((weight / top) * (rows - 1));
  const columnOf = (age: number): number => Math.round((age / days) * (columns - 1));
  for (let column = 0; column < columns; column += 1) {
    const [low, middle, high] = at(series, (column / (columns - 1)) * days);
    for (let row = rowOf(high); row <= rowOf(low); row += 1) canvas.put(row, column, marks.range);
    canvas.put(rowOf(middle), column, marks.line);
  }
  const now = columnOf(daysBetween(series.from, series.today));
  for (let row = 0; row < rows; row += 1) canvas.put(row, now, marks.today);
  for (const [age, mean] of series.weighings) canvas.put(rowOf(mean), columnOf(age), marks.seen);
  const label = (row: number): string =>
    row === 0 ? sayWeight(speech, top) : row === rows - 1 ? sayWeight(speech, 0) : '';
  const body = canvas
    .lines()
    .map((line, row) => `${label(row).padStart(margin - 2)} ${marks.upright}${line}`);
  const foot = `${' '.repeat(margin - 1)}${marks.corner}${marks.across.repeat(columns)}`;
  const [first, last] = [sayDay(series.from, speech.today), sayDay(series.to, speech.today)];
  const scale = `${' '.repeat(margin)}${first}${last.padStart(columns - first.length)}`;
  const key = `${' '.repeat(margin)}${marks.line} expected  ${marks.range} range  ${marks.seen} weighed  ${marks.today} ${series.today === speech.today ? 'today' : 'the day asked'}`;
  return { lines: [...body, foot, scale, key], says: sayGrowth(speech, series, group) };
};
