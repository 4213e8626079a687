/** What the keeper's scale said: when, how many, how heavy beside the plan line, and how many to weigh next time. */
import { daysBetween } from '../../day.ts';
import type { FromEntry, Group, Weighing } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { halfWidth } from '../sums/normal.ts';
import { joinSamples, poolSpread, type Sample, sampleFor } from '../sums/sampling.ts';
import { planCurve, planFigures, planNeeds } from './plan.ts';

/** All that was weighed of a group on one day. */
export interface WeighingDay extends Sample, FromEntry {
  /** Age of the birds, days. */
  readonly age: number;
  readonly entries: readonly Weighing[];
}

/** The group's weighings day by day, oldest first: birds weighed in several goes on a day are one sample. */
export const weighingDays = (group: Group): readonly WeighingDay[] => {
  const days = new Map<string, Weighing[]>();
  // A scale read as nothing is no weight, and has no logarithm.
  for (const each of group.weighings.filter(({ mean }) => mean > 0))
    days.set(each.on, [...(days.get(each.on) ?? []), each]);
  return [...days]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([on, entries]) => ({
      ...joinSamples(entries),
      on,
      line: entries.at(-1)?.line ?? group.line,
      age: daysBetween(group.hatched, on),
      entries,
    }));
};

const latestDay = (read: Reader): WeighingDay | undefined => {
  const latest = weighingDays(read.group).at(-1);
  if (latest !== undefined) read.from(...latest.entries);
  return latest;
};

export const weighingFacts = [
  defineFact({
    id: 'weighed',
    unit: null,
    compute: (read) => latestDay(read) !== undefined,
  }),
  defineFact({
    id: 'last-weighed',
    unit: 'date',
    compute: (read) => latestDay(read)?.on,
  }),
  defineFact({
    id: 'days-since-weighed',
    unit: 'day',
    needs: ['last-weighed'],
    compute: (read) => daysBetween(read.text('last-weighed'), read.on),
  }),
  defineFact({
    id: 'birds-weighed',
    unit: 'bird',
    needs: ['last-weighed'],
    compute: (read) => latestDay(read)?.count,
  }),
  defineFact({
    id: 'weighed-mean',
    unit: 'kg',
    needs: ['last-weighed'],
    compute: (read) => latestDay(read)?.mean,
  }),
  defineFact({
    id: 'growth-ratio',
    unit: 'ratio',
    needs: ['weighed-mean', ...planNeeds],
    figures: planFigures,
    compute: (read) => {
      const latest = latestDay(read);
      return latest === undefined ? undefined : read.number('weighed-mean') / planCurve(read)(latest.age);
    },
  }),
  defineFact({
    id: 'bird-spread',
    unit: 'ratio',
    needs: ['sexes'],
    figures: ['growth/bird-spread', 'growth/bird-spread-trust'],
    compute: (read) => {
      const seen = weighingDays(read.group).flatMap(({ mean, count, spread, entries }) => {
        if (spread === null) return [];
        read.from(...entries);
        return [{ spread: spread / mean, count }];
      });
      return poolSpread(read.figure('growth/bird-spread'), read.figure('growth/bird-spread-trust'), seen);
    },
  }),
  defineFact({
    id: 'birds-to-weigh',
    unit: 'bird',
    needs: ['bird-spread', 'alive'],
    figures: ['growth/weighing-precision', 'growth/weighing-certainty'],
    compute: (read) =>
      sampleFor(
        read.number('bird-spread'),
        read.figure('growth/weighing-precision'),
        halfWidth(read.figure('growth/weighing-certainty')),
        read.number('alive'),
      ),
  }),
];
