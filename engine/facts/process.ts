/** When a group has the wanted carcass, with its range, and what waiting a week more brings and costs. */
import { addDays, type Day, daysBetween } from '../day.ts';
import { defineFact, type Reader } from './define.ts';
import { flockPace, paceFigures, paceNeeds } from './growth/live.ts';
import type { Curve } from './growth/plan.ts';
import { settingNumber } from './setting.ts';
import { firstWhere } from './sums/search.ts';

const daysInWeek = 7;
const readyNeeds = [...paceNeeds, 'dressing-share', 'wanted-carcass'];

/** The first day on which this curve gives the wanted carcass, or undefined when it never does. */
const dayReached = (read: Reader, curve: Curve, ends: number): Day | undefined => {
  const wantedAlive = read.number('wanted-carcass') / read.number('dressing-share');
  const age = firstWhere(0, ends, (each) => curve(each) >= wantedAlive);
  return age === undefined ? undefined : addDays(read.group.hatched, age);
};

/** Carcass of one bird at an age, kg. */
const carcassAt = (read: Reader, age: number): number =>
  flockPace(read).middle(age) * read.number('dressing-share');

export const processFacts = [
  defineFact({
    id: 'wanted-carcass',
    unit: 'kg',
    per: 'flock',
    figures: ['process/usual-carcass'],
    compute: (read) => {
      const wanted = settingNumber(read, 'wanted-carcass');
      if (wanted !== undefined) return wanted;
      const usual = read.figure('process/usual-carcass');
      read.assume('usual-carcass', { weight: { value: usual, unit: 'kg' } });
      return usual;
    },
  }),
  defineFact({
    id: 'dressing-share',
    unit: 'ratio',
    needs: ['growth-line'],
    figures: ['process/dressing'],
    compute: (read) => read.figure('process/dressing'),
  }),
  defineFact({
    id: 'carcass-weight',
    unit: 'kg',
    needs: ['live-weight', 'dressing-share'],
    compute: (read) => read.number('live-weight') * read.number('dressing-share'),
  }),
  defineFact({
    id: 'ready-on',
    unit: 'date',
    needs: readyNeeds,
    figures: paceFigures,
    compute: (read) => {
      const { middle, ends } = flockPace(read);
      const on = dayReached(read, middle, ends);
      if (on !== undefined && on > read.asked) read.assume('growth-keeps-pace');
      return on;
    },
  }),
  defineFact({
    id: 'reaches-weight',
    unit: null,
    needs: readyNeeds,
    figures: paceFigures,
    compute: (read) => {
      const { middle, ends } = flockPace(read);
      return dayReached(read, middle, ends) !== undefined;
    },
  }),
  defineFact({
    id: 'ready-early',
    unit: 'date',
    needs: [...readyNeeds, 'ready-on'],
    figures: paceFigures,
    compute: (read) => {
      const { high, ends } = flockPace(read);
      return dayReached(read, high, ends);
    },
  }),
  defineFact({
    id: 'ready-late',
    unit: 'date',
    needs: [...readyNeeds, 'ready-on', 'held-until'],
    figures: paceFigures,
    compute: (read) => {
      const { low, ends } = flockPace(read);
      const [ready, latest] = [read.text('ready-on'), read.text('held-until')];
      if (ready >= latest) return ready;
      const late = dayReached(read, low, ends);
      // Days past the last on which such birds are held say nothing to a keeper.
      return late !== undefined && late <= latest ? late : latest;
    },
  }),
  defineFact({
    id: 'days-to-ready',
    unit: 'day',
    needs: ['ready-on'],
    compute: (read) => daysBetween(read.on, read.text('ready-on')),
  }),
  defineFact({
    id: 'window-opens',
    unit: 'date',
    needs: ['growth-line'],
    figures: ['process/window-opens'],
    compute: (read) => addDays(read.group.hatched, read.figure('process/window-opens')),
  }),
  defineFact({
    id: 'window-closes',
    unit: 'date',
    needs: ['growth-line'],
    figures: ['process/window-closes'],
    compute: (read) => addDays(read.group.hatched, read.figure('process/window-closes')),
  }),
  defineFact({
    id: 'carcass-at-close',
    unit: 'kg',
    needs: [...paceNeeds, 'dressing-share', 'window-closes'],
    figures: paceFigures,
    compute: (read) => carcassAt(read, daysBetween(read.group.hatched, read.text('window-closes'))),
  }),
  defineFact({
    id: 'held-until',
    unit: 'date',
    needs: ['growth-line'],
    figures: ['process/held-longest'],
    compute: (read) => addDays(read.group.hatched, read.figure('process/held-longest')),
  }),
  defineFact({
    id: 'carcass-at-last',
    unit: 'kg',
    needs: [...paceNeeds, 'dressing-share', 'held-until'],
    figures: paceFigures,
    compute: (read) => carcassAt(read, daysBetween(read.group.hatched, read.text('held-until'))),
  }),
  defineFact({
    id: 'next-week-gain',
    unit: 'kg',
    needs: [...paceNeeds, 'dressing-share'],
    figures: paceFigures,
    compute: (read) => carcassAt(read, read.number('age') + daysInWeek) - carcassAt(read, read.number('age')),
  }),
  defineFact({
    id: 'next-weight-cost',
    unit: 'money/kg',
    needs: ['next-week-gain', 'feed-next-week', 'feed-price'],
    compute: (read) => {
      const gain = read.number('next-week-gain');
      return gain > 0 ? (read.number('feed-next-week') * read.number('feed-price')) / gain : undefined;
    },
  }),
];
