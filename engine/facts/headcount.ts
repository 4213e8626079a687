/** Where the birds of a group went, so that the count can be added up by hand. */
import type { FromEntry } from '../types.ts';
import { defineFact, type Reader } from './define.ts';

type Counted = FromEntry & { readonly count: number };

/** Adds up birds and records the entries they were told in. */
const countOf = (read: Reader, entries: readonly Counted[]): number => {
  read.from(...entries);
  return entries.reduce((sum, each) => sum + each.count, 0);
};

export const headcountFacts = [
  defineFact({
    id: 'boxed',
    unit: 'bird',
    compute: (read) => {
      read.from({ on: read.group.arrived, line: read.group.line });
      return read.group.boxed;
    },
  }),
  defineFact({
    id: 'dead-on-arrival',
    unit: 'bird',
    compute: (read) => {
      read.from({ on: read.group.arrived, line: read.group.line });
      return read.group.dead;
    },
  }),
  defineFact({
    id: 'arrived-alive',
    unit: 'bird',
    needs: ['boxed', 'dead-on-arrival'],
    compute: (read) => read.number('boxed') - read.number('dead-on-arrival'),
  }),
  defineFact({
    id: 'processed',
    unit: 'bird',
    compute: (read) => countOf(read, read.group.processed),
  }),
  defineFact({
    id: 'birds-to-hand',
    unit: 'bird',
    per: 'flock',
    needs: ['freezer-left'],
    each: ['birds-for-table'],
    compute: (read) =>
      read
        .each('birds-for-table')
        .reduce((sum, { value }) => sum + Number(value ?? 0), read.number('freezer-left')),
  }),
];
