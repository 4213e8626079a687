/** How much feed has gone into the live weight of a group, by its records and by the tables. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import type { Feeding } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { onlyAsked } from '../told.ts';
import { byGroup } from '../views.ts';
import { eaterEach, eaterFigures, eatersOf } from './eater.ts';
import { givenOn } from './given.ts';

/** Eaters by the tables alone: own records are what is being compared with them. */
const tableEach = eaterEach.filter((fact) => fact !== 'feed-ratio');

const declared = {
  needs: ['growth-line', 'alive', 'live-weight', 'processed'],
  each: tableEach,
  wants: ['loss-rate'],
  figures: eaterFigures,
} as const;

/** Whole days since arrival; today is left out, since it may still get more. */
const daysHere = (read: Reader): readonly Day[] =>
  Array.from({ length: Math.max(0, daysBetween(read.group.arrived, read.asked)) }, (_, n) =>
    addDays(read.group.arrived, n),
  );

const recordedDays = (read: Reader): number => {
  const own = read.see(byGroup<Feeding>, read.state.feedings)(read.group.name);
  const days = new Set(daysHere(read));
  const counted = own.filter(({ on }) => days.has(on));
  read.from(...counted);
  return new Set(counted.map(({ on }) => on)).size;
};

interface FeedSoFar {
  /** kg on record; days without one count as expected. */
  readonly given: number;
  /** kg by the tables. */
  readonly expected: number;
}

const feedSoFar = (read: Reader): FeedSoFar | undefined => {
  const eaters = eatersOf(read, tableEach);
  const own = eaters.find((eater) => eater?.group.name === read.group.name);
  if (own === undefined) return undefined;
  const givenFor = givenOn(read, eaters);
  const each = daysHere(read).map((day) => ({ expected: own.all(day), record: givenFor(own, day) }));
  for (const { record } of each) if (record !== undefined) read.from(...record.entries);
  return {
    given: each.reduce((sum, { expected, record }) => sum + (record?.mass ?? expected), 0),
    expected: each.reduce((sum, { expected }) => sum + expected, 0),
  };
};

/** kg of live birds; undefined once some were processed, since what those weighed alive is not on record. */
const liveMass = (read: Reader): number | undefined => {
  const mass = read.number('alive') * read.number('live-weight');
  return read.number('processed') > 0 || mass <= 0 ? undefined : mass;
};

export const conversionFacts = [
  onlyAsked('asks-conversion', null, 'no'),
  defineFact({
    id: 'conversion-days',
    unit: 'day',
    compute: recordedDays,
  }),
  defineFact({
    id: 'conversion-covered',
    unit: 'ratio',
    needs: ['conversion-days'],
    compute: (read) => {
      const days = daysHere(read).length;
      return days === 0 ? undefined : read.number('conversion-days') / days;
    },
  }),
  defineFact({
    id: 'conversion-unrecorded',
    unit: 'day',
    needs: ['conversion-days', 'conversion-covered'],
    figures: ['feed/records-coverage'],
    compute: (read) =>
      // With fewer records it would be the tables' number and not the flock's.
      read.number('conversion-covered') < read.figure('feed/records-coverage')
        ? undefined
        : daysHere(read).length - read.number('conversion-days'),
  }),
  defineFact({
    id: 'feed-conversion',
    unit: null,
    ...declared,
    needs: [...declared.needs, 'conversion-unrecorded'],
    compute: (read) => {
      const so = feedSoFar(read);
      const live = liveMass(read);
      if (so === undefined || live === undefined) return undefined;
      const unrecorded = read.number('conversion-unrecorded');
      if (unrecorded > 0)
        read.assume('days-without-feed-record', {
          days: { value: unrecorded, unit: 'day' },
          from: { value: read.group.arrived, unit: 'date' },
        });
      return so.given / live;
    },
  }),
  defineFact({
    id: 'conversion-expected',
    unit: null,
    ...declared,
    compute: (read) => {
      const so = feedSoFar(read);
      const live = liveMass(read);
      return so === undefined || live === undefined ? undefined : so.expected / live;
    },
  }),
  defineFact({
    id: 'conversion-usual',
    unit: null,
    needs: ['growth-line'],
    figures: ['feed/conversion-usual'],
    compute: (read) => read.figure('feed/conversion-usual'),
  }),
];
