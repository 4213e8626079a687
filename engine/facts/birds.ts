/** How old the birds are, how many are alive and where: what every other model starts from. */
import { daysBetween } from '../day.ts';
import type { FromEntry, Group } from '../types.ts';
import { defineFact } from './define.ts';

/** The entry that brought a group. */
const arrivalOf = (group: Group): FromEntry => ({ on: group.arrived, line: group.line });

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

export const birdFacts = [
  defineFact({
    id: 'hatched-on',
    unit: 'date',
    compute: (read) => {
      read.from(arrivalOf(read.group));
      return read.group.hatched;
    },
  }),
  defineFact({
    id: 'age',
    unit: 'day',
    compute: (read) => {
      read.from(arrivalOf(read.group));
      return daysBetween(read.group.hatched, read.on);
    },
  }),
  defineFact({
    id: 'only-thought-of',
    unit: null,
    // A group that was laid over the records to answer for it stands on no line of them.
    compute: (read) => (read.group.line === 0 ? 'yes' : 'no'),
  }),
  defineFact({
    id: 'kind',
    unit: null,
    compute: (read) => {
      read.from(arrivalOf(read.group));
      return read.group.kind;
    },
  }),
  defineFact({
    id: 'sexes',
    unit: null,
    compute: (read) => {
      read.from(arrivalOf(read.group));
      return read.group.sexes;
    },
  }),
  defineFact({
    id: 'lost',
    unit: 'bird',
    compute: (read) => {
      read.from(...read.group.losses);
      return sum(read.group.losses.map((each) => each.count));
    },
  }),
  defineFact({
    id: 'alive',
    unit: 'bird',
    needs: ['lost', 'boxed', 'dead-on-arrival', 'processed'],
    compute: (read) => {
      read.from(arrivalOf(read.group), ...read.group.processed);
      const gone = ['dead-on-arrival', 'lost', 'processed'].map((fact) => read.number(fact));
      return read.number('boxed') - sum(gone);
    },
  }),
  defineFact({
    id: 'has-birds',
    unit: null,
    needs: ['alive', 'age'],
    compute: (read) => (read.number('alive') > 0 && read.number('age') >= 0 ? 'yes' : 'no'),
  }),
  defineFact({
    id: 'kept-back',
    unit: 'bird',
    needs: ['alive'],
    compute: (read) => {
      const held = read.group.kept.filter((each) => each.until === null || each.until >= read.on);
      read.from(...held);
      return Math.min(read.number('alive'), sum(held.map((each) => each.count)));
    },
  }),
  defineFact({
    id: 'place',
    unit: null,
    needs: ['alive'],
    compute: (read) => {
      if (read.number('alive') <= 0) return 'gone';
      const last = read.group.whereabouts.at(-1);
      if (last === undefined || last.daysOnly) return 'brooder';
      read.from(last);
      return last.place;
    },
  }),
];
