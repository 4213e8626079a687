/** Groups that share a pen: which of them is the smaller, how long they have been together, and how they compare. */
import { daysBetween } from '../../day.ts';
import { defineFact, type Reader } from '../define.ts';
import { besides, penEach } from './pens.ts';

const each = [...penEach, 'live-weight'];

interface Neighbour {
  readonly name: string;
  readonly since: string;
  /** Own live weight as a share of theirs; undefined where one of them is not known. */
  readonly share: number | undefined;
}

/** The largest group beside which this one is the smaller by weight, or by age where a weight is not known. */
const largerBeside = (read: Reader): Neighbour | undefined => {
  const others = besides(read, read.group.name);
  // Most groups have a pen to themselves: then no other one's weight has to be worked out.
  if (others.length === 0) return undefined;
  const weights = read.each('live-weight');
  const weightOf = (name: string) => weights.find(({ group }) => group.name === name)?.value;
  const own = weightOf(read.group.name);
  const larger = others.flatMap(({ name, since }): Neighbour[] => {
    const theirs = weightOf(name);
    const share = typeof own === 'number' && typeof theirs === 'number' ? own / theirs : undefined;
    const other = read.state.groups.find((group) => group.name === name);
    const isSmaller = share === undefined ? read.group.hatched > (other?.hatched ?? '') : share < 1;
    return isSmaller ? [{ name, since, share }] : [];
  });
  return larger.sort((a, b) => (a.share ?? 1) - (b.share ?? 1))[0];
};

export const besideFacts = [
  defineFact({
    id: 'smaller-beside',
    unit: null,
    each,
    compute: (read) => largerBeside(read)?.name ?? 'none',
  }),
  defineFact({
    id: 'beside-since',
    unit: 'date',
    each,
    compute: (read) => largerBeside(read)?.since,
  }),
  defineFact({
    id: 'days-beside',
    unit: 'day',
    needs: ['beside-since'],
    compute: (read) => daysBetween(read.text('beside-since'), read.on),
  }),
  defineFact({
    id: 'ration-beside',
    unit: null,
    each: [...each, 'ration'],
    compute: (read) => {
      const other = largerBeside(read);
      const ration = read.each('ration').find(({ group }) => group.name === other?.name);
      return ration?.value;
    },
  }),
  defineFact({
    id: 'weight-beside',
    unit: 'ratio',
    each,
    compute: (read) => largerBeside(read)?.share,
  }),
];
