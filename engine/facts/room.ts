/** Room for a group where it lives: what each bird has, what it wants by age and by weight, and the day it gets tight. */
import { addDays, type Day, daysBetween } from '../day.ts';
import { defineFact, type Reader } from './define.ts';
import { latestOf } from './feed/days.ts';
import { flockPace, paceFigures, paceNeeds } from './growth/live.ts';
import { onlyAsked } from './told.ts';

const daysInWeek = 7;

/** Least area for a bird of an age in days by the place it lives in, m². */
const byAge = (read: Reader, age: number): number | undefined =>
  read.text('place') === 'pen'
    ? read.figure('pasture/pen-space-least')
    : read.maybeFigure('brooder/floor-space', [age / daysInWeek]);

/** The first day up to the end looked at on which a bird wants more than it has. */
const firstTight = (read: Reader, wantedAhead: (days: number) => number | undefined): Day | undefined => {
  const days = daysBetween(read.on, read.text('room-end'));
  for (let ahead = 0; ahead <= days; ahead += 1) {
    const wanted = wantedAhead(ahead);
    if (wanted !== undefined && wanted > read.number('area-per-bird')) return addDays(read.on, ahead);
  }
  return undefined;
};

export const roomFacts = [
  onlyAsked('asked-pen', null, 'no'),
  onlyAsked('asked-brooder', null, 'no'),
  defineFact({
    id: 'room-asked',
    unit: null,
    needs: ['place', 'asked-pen', 'asked-brooder'],
    compute: (read) => {
      const place = read.text('place');
      if (place === 'gone') return 'no';
      const isAnyNamed = read.text('asked-pen') === 'yes' || read.text('asked-brooder') === 'yes';
      return isAnyNamed ? read.text(place === 'pen' ? 'asked-pen' : 'asked-brooder') : 'yes';
    },
  }),
  defineFact({
    id: 'room-area',
    unit: 'm2',
    needs: ['place'],
    wants: ['brooder-floor', 'pen-area', 'pens'],
    compute: (read) => {
      if (read.text('place') === 'brooder') return read.maybe('brooder-floor');
      const pen = read.maybe('pen-area');
      return read.text('place') === 'pen' && typeof pen === 'number'
        ? pen * Number(read.maybe('pens') ?? 1)
        : undefined;
    },
  }),
  defineFact({
    id: 'sharing',
    unit: 'bird',
    needs: ['place'],
    wants: ['birds-in-brooder', 'birds-in-pens'],
    compute: (read) => read.maybe(read.text('place') === 'brooder' ? 'birds-in-brooder' : 'birds-in-pens'),
  }),
  defineFact({
    id: 'area-per-bird',
    unit: 'm2',
    needs: ['room-area', 'sharing'],
    compute: (read) =>
      read.number('sharing') > 0 ? read.number('room-area') / read.number('sharing') : undefined,
  }),
  defineFact({
    id: 'room-by-age',
    unit: 'm2',
    needs: ['age', 'place'],
    figures: ['brooder/floor-space', 'pasture/pen-space-least'],
    compute: (read) => byAge(read, read.number('age')),
  }),
  defineFact({
    id: 'room-by-weight',
    unit: 'm2',
    needs: ['live-weight'],
    figures: ['room/heaviest'],
    compute: (read) => read.number('live-weight') / read.figure('room/heaviest'),
  }),
  defineFact({
    id: 'room-wanted',
    unit: 'm2',
    needs: ['room-by-age'],
    wants: ['room-by-weight'],
    compute: (read) => Math.max(read.number('room-by-age'), Number(read.maybe('room-by-weight') ?? 0)),
  }),
  defineFact({
    id: 'weight-per-area',
    unit: 'kg/m2',
    needs: ['live-weight', 'area-per-bird'],
    compute: (read) => read.number('live-weight') / read.number('area-per-bird'),
  }),
  defineFact({
    id: 'fit',
    unit: 'bird',
    needs: ['room-area', 'room-wanted'],
    compute: (read) => Math.floor(read.number('room-area') / read.number('room-wanted') + 1e-9),
  }),
  defineFact({
    id: 'over-fit',
    unit: 'bird',
    needs: ['sharing', 'fit'],
    compute: (read) => Math.max(0, read.number('sharing') - read.number('fit')),
  }),
  defineFact({
    id: 'area-short',
    unit: 'm2',
    needs: ['sharing', 'room-wanted', 'room-area'],
    compute: (read) =>
      Math.max(0, read.number('sharing') * read.number('room-wanted') - read.number('room-area')),
  }),
  defineFact({
    id: 'room-end',
    unit: 'date',
    wants: ['table-day'],
    figures: ['search/look-ahead'],
    compute: (read) => {
      const end = read.maybe('table-day');
      if (typeof end === 'string') return latestOf(read.on, end);
      return addDays(read.on, read.figure('search/look-ahead'));
    },
  }),
  defineFact({
    id: 'tight-by-age-on',
    unit: 'date',
    needs: ['age', 'place', 'area-per-bird', 'room-end'],
    figures: ['brooder/floor-space', 'pasture/pen-space-least'],
    compute: (read) => firstTight(read, (days) => byAge(read, read.number('age') + days)),
  }),
  defineFact({
    id: 'tight-by-weight-on',
    unit: 'date',
    needs: [...paceNeeds, 'area-per-bird', 'room-end'],
    figures: [...paceFigures, 'room/heaviest'],
    compute: (read) => {
      const { middle } = flockPace(read);
      const most = read.figure('room/heaviest');
      return firstTight(read, (days) => middle(read.number('age') + days) / most);
    },
  }),
  defineFact({
    id: 'tight-on',
    unit: 'date',
    wants: ['tight-by-age-on', 'tight-by-weight-on'],
    compute: (read) => {
      const days = ['tight-by-age-on', 'tight-by-weight-on'].flatMap((fact) => {
        const day = read.maybe(fact);
        return typeof day === 'string' ? [day] : [];
      });
      const first = days.sort()[0];
      if (first !== undefined && first > read.on) read.assume('as-many-as-now');
      return first;
    },
  }),
  defineFact({
    id: 'room-lasts',
    unit: null,
    needs: ['area-per-bird', 'room-wanted', 'room-end'],
    wants: ['tight-on'],
    compute: (read) => {
      if (read.number('area-per-bird') < read.number('room-wanted')) return 'tight';
      return read.maybe('tight-on') === undefined ? 'to-the-end' : 'for-now';
    },
  }),
  defineFact({
    id: 'days-to-tight',
    unit: 'day',
    needs: ['room-lasts'],
    wants: ['tight-on'],
    compute: (read) => {
      const day = read.maybe('tight-on');
      return typeof day === 'string' ? daysBetween(read.on, day) : undefined;
    },
  }),
];
