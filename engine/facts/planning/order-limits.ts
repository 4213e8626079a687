/** How many birds the brooder, the pens and the freezer take at once, and into how many lots an order falls. */
import { defineFact } from '../define.ts';
import { wholeDown } from '../sums/whole.ts';
import { liveWanted } from './kind-ready.ts';

const daysInWeek = 7;

export const orderLimitFacts = [
  defineFact({
    id: 'brooder-takes',
    unit: 'bird',
    per: 'flock',
    needs: ['brooder-floor'],
    figures: ['brooder/floor-space', 'order/brooder-until'],
    compute: (read) => {
      const until = read.figure('order/brooder-until') / daysInWeek;
      return wholeDown(read.number('brooder-floor') / read.figure('brooder/floor-space', [until]));
    },
  }),
  defineFact({
    id: 'pens-take',
    unit: 'bird',
    per: 'flock',
    needs: ['pen-area', 'order-kind', 'wanted-carcass'],
    wants: ['pens'],
    figures: ['pasture/pen-space-least', 'room/heaviest', 'process/dressing'],
    compute: (read) => {
      const byWeight = liveWanted(read, read.text('order-kind')) / read.figure('room/heaviest');
      const each = Math.max(read.figure('pasture/pen-space-least'), byWeight);
      return wholeDown((read.number('pen-area') * Number(read.maybe('pens') ?? 1)) / each);
    },
  }),
  defineFact({
    id: 'freezer-takes',
    unit: 'bird',
    per: 'flock',
    needs: ['freezer-free', 'wanted-carcass'],
    figures: ['freezer/whole-birds'],
    compute: (read) =>
      wholeDown(
        (read.number('freezer-free') * read.figure('freezer/whole-birds')) / read.number('wanted-carcass'),
      ),
  }),
  defineFact({
    id: 'lot-limit',
    unit: 'bird',
    per: 'flock',
    wants: ['brooder-takes', 'pens-take', 'freezer-takes'],
    compute: (read) => {
      const known = ['brooder-takes', 'pens-take', 'freezer-takes'].flatMap((fact) => {
        const value = read.maybe(fact);
        return typeof value === 'number' ? [value] : [];
      });
      return known.length === 0 ? undefined : Math.min(...known);
    },
  }),
  defineFact({
    id: 'lots',
    unit: 'lot',
    per: 'flock',
    needs: ['order', 'lot-limit'],
    compute: (read) =>
      read.number('lot-limit') > 0 ? Math.ceil(read.number('order') / read.number('lot-limit')) : undefined,
  }),
  defineFact({
    id: 'lot-size',
    unit: 'bird',
    per: 'flock',
    needs: ['order', 'lots'],
    compute: (read) => Math.ceil(read.number('order') / read.number('lots')),
  }),
];
