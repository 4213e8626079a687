/** The batches of a year on a time line: in the brooder, on grass, and gone. */
import { type Day, daysBetween } from '../../engine/day.ts';
import { listed } from '../say/listed.ts';
import { sayDay } from '../say/quantity.ts';
import type { Speech } from '../say/speech.ts';
import type { Draw } from './picture.ts';

export interface Batch {
  readonly group: string;
  readonly hatched: Day;
  /** The day they went out to grass; null while they have not. */
  readonly out: Day | null;
  /** The day they were or should be processed; null where it is not known. */
  readonly end: Day | null;
  readonly isGone: boolean;
}

export interface YearSeries {
  readonly today: Day;
  readonly batches: readonly Batch[];
}

const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');
const margin = 11;
const longestName = margin - 2;

const sayBatch = (speech: Speech, { group, hatched, out, end, isGone }: Batch): string => {
  const day = (on: Day): string => sayDay(on, speech.today);
  const grass = out === null ? '' : `, out on ${day(out)}`;
  const last = end === null ? '' : isGone ? `, gone by ${day(end)}` : `, to be processed on ${day(end)}`;
  return `the ${group} hatched on ${day(hatched)}${grass}${last}`;
};

export const drawYear: Draw<YearSeries> = (speech, { today, batches }, _group, { marks, width }) => {
  // Whole columns a month, so that the months stand over what they are.
  const columns = Math.floor((width - margin) / months.length) * months.length;
  const year = today.slice(0, 4);
  const first = `${year}-01-01`;
  const days = daysBetween(first, `${Number(year) + 1}-01-01`);
  const columnOf = (on: Day): number => Math.floor((daysBetween(first, on) * columns) / days);
  const inYear = batches.filter(
    ({ hatched, end }) => hatched.slice(0, 4) <= year && (end ?? today).slice(0, 4) >= year,
  );
  const rows = inYear.map(({ group, hatched, out, end }) => {
    const [from, grass, to] = [columnOf(hatched), columnOf(out ?? '9999-12-31'), columnOf(end ?? today)];
    const cells = Array.from({ length: columns }, (_, at) =>
      at < from || at > to ? ' ' : at < grass ? marks.light : marks.full,
    );
    return `${group.slice(0, longestName).padEnd(margin)}${cells.join('').trimEnd()}`;
  });
  const head = `${year.padEnd(margin)}${months.map((name) => name.padEnd(columns / months.length)).join('')}`;
  const now = `${' '.repeat(margin + columnOf(today))}${marks.today} ${today === speech.today ? 'today' : 'the day asked'}`;
  const key = `${' '.repeat(margin)}${marks.light} brooder  ${marks.full} grass`;
  const says = `The batches of ${year}: ${listed(inYear.map((batch) => sayBatch(speech, batch)))}.`;
  return { lines: [head.slice(0, width).trimEnd(), ...rows, now.slice(0, width), key], says };
};
