/** The days to come in a group's life that another model does not date already, and how far ahead to list them. */
import { addDays, type Day } from '../day.ts';
import { defineFact } from './define.ts';

const later = (one: Day, other: Day): Day => (one > other ? one : other);

export const keyDateFacts = [
  defineFact({
    id: 'dates-until',
    unit: 'date',
    per: 'flock',
    figures: ['dates/ahead'],
    compute: (read) => read.until ?? addDays(read.on, read.figure('dates/ahead')),
  }),
  defineFact({
    id: 'day-asked',
    unit: 'date',
    per: 'flock',
    compute: (read) => read.on,
  }),
  // Foretold by the rules about going out, looking ahead; nothing but them can say it.
  defineFact({ id: 'out-day', unit: 'date', compute: () => undefined }),
  defineFact({
    id: 'weigh-on',
    unit: 'date',
    needs: ['age', 'has-birds'],
    wants: ['last-weighed'],
    figures: ['growth/weigh-every', 'growth/weigh-from'],
    compute: (read) => {
      if (read.text('has-birds') === 'no') return undefined;
      const last = read.maybe('last-weighed');
      const due =
        last === undefined
          ? addDays(read.group.hatched, read.figure('growth/weigh-from'))
          : addDays(String(last), read.figure('growth/weigh-every'));
      return later(due, read.on);
    },
  }),
];
