/** Which day a group is processed on, and what its birds should be by then. */
import { addDays, type Day, daysBetween } from '../../day.ts';
import type { Value } from '../../types.ts';
import { defineFact, type Reader } from '../define.ts';
import { latestOf } from '../feed/days.ts';
import { flockPace, paceFigures, paceNeeds } from '../growth/live.ts';
import { settingOf } from '../setting.ts';

/**
 * The day that the keeper set, unless it is over or too early for a group; a day set means the birds that are old enough
 * by then.
 * @param opens the first day on which such birds are processed, and when these are ready, where that is known
 */
export const bookedDay = (read: Reader, opens: Day | undefined, ready: Day | undefined): Day | undefined => {
  const set = settingOf(read, 'process-on')?.value;
  if (typeof set !== 'string' || set < read.on) return undefined;
  const isTooEarly = opens !== undefined && set < opens && (ready === undefined || set < ready);
  return isTooEarly ? undefined : set;
};

const dayOf = (value: Value | undefined): Day | undefined =>
  value === undefined ? undefined : String(value);

export const dayFacts = [
  defineFact({
    id: 'process-booked',
    unit: 'date',
    wants: ['window-opens', 'ready-on'],
    compute: (read) => bookedDay(read, dayOf(read.maybe('window-opens')), dayOf(read.maybe('ready-on'))),
  }),
  defineFact({
    id: 'table-day',
    unit: 'date',
    wants: ['process-booked', 'ready-on'],
    compute: (read) => read.maybe('process-booked') ?? read.maybe('ready-on'),
  }),
  defineFact({
    id: 'process-due',
    unit: 'date',
    needs: ['only-thought-of'],
    wants: ['process-booked', 'ready-on', 'window-closes'],
    compute: (read) => {
      const booked = read.maybe('process-booked');
      if (booked !== undefined) return booked;
      // Birds that are only thought of are ready on the day they are asked about.
      if (read.text('only-thought-of') === 'yes') return read.on;
      const ready = read.maybe('ready-on') ?? read.maybe('window-closes');
      if (ready === undefined) return undefined;
      // Birds that are ready today have not gone without feed, so tomorrow is the first day that can be had.
      const on = latestOf(String(ready), addDays(read.on, 1));
      read.assume('processed-when-ready', { on: { value: on, unit: 'date' } });
      return on;
    },
  }),
  defineFact({
    id: 'process-date',
    unit: 'date',
    needs: ['process-due'],
    compute: (read) => read.text('process-due'),
  }),
  defineFact({
    id: 'process-is-dated',
    unit: null,
    needs: ['process-date', 'only-thought-of'],
    compute: (read) =>
      read.text('only-thought-of') === 'yes' && read.text('process-date') === read.on ? 'no' : 'yes',
  }),
  defineFact({
    id: 'days-to-process',
    unit: 'day',
    needs: ['process-booked'],
    compute: (read) => daysBetween(read.on, read.text('process-booked')),
  }),
  defineFact({
    id: 'next-to-process',
    unit: null,
    needs: ['has-birds'],
    wants: ['process-due'],
    each: ['has-birds', 'process-due'],
    compute: (read) => {
      const here = read.each('has-birds').map(({ value }) => value === 'yes');
      const days = read.each('process-due').flatMap(({ value }, at) => (here[at] === true ? [value] : []));
      const first = days.filter((day) => day !== undefined).sort()[0];
      return read.text('has-birds') === 'yes' && read.maybe('process-due') === first ? 'yes' : 'no';
    },
  }),
  defineFact({
    id: 'birds-on-the-day',
    unit: 'bird',
    needs: ['alive', 'kept-back'],
    wants: ['birds-told'],
    compute: (read) =>
      read.maybe('birds-told') ?? Math.max(0, read.number('alive') - read.number('kept-back')),
  }),
  defineFact({
    id: 'carcass-on-the-day',
    unit: 'kg',
    needs: [...paceNeeds, 'dressing-share', 'process-date', 'only-thought-of'],
    figures: paceFigures,
    compute: (read) => {
      // A day named for birds that are only thought of is the day on which they are ready.
      const on = read.text('only-thought-of') === 'yes' ? read.on : read.text('process-date');
      return flockPace(read).middle(daysBetween(read.group.hatched, on)) * read.number('dressing-share');
    },
  }),
];
