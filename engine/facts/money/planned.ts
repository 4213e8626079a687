/** What birds that are only planned come to: their feed up to processing, beside what is paid already. */
import { defineFact } from '../define.ts';
import { bagsFor } from '../feed/bags.ts';
import { settingNumber } from '../setting.ts';
import { sumMoney, timesMoney } from '../sums/exact-money.ts';
import { againstPrice } from './against-price.ts';

export const plannedFacts = [
  defineFact({
    id: 'only-planned',
    unit: null,
    per: 'flock',
    compute: (read) => (read.state.groups.length === 0 ? 'yes' : 'no'),
  }),
  defineFact({
    id: 'chicks-bought',
    unit: 'bird',
    per: 'flock',
    compute: (read) => {
      const bought = read.state.purchases.filter(({ what, count }) => what === 'chicks' && count !== null);
      read.from(...bought);
      return bought.reduce((sum, { count }) => sum + (count ?? 0), 0);
    },
  }),
  defineFact({
    id: 'planned-chicks',
    unit: 'bird',
    per: 'flock',
    needs: ['only-planned', 'chicks-bought'],
    wants: ['order'],
    compute: (read) => {
      if (read.text('only-planned') === 'no') return undefined;
      const bought = read.number('chicks-bought');
      return bought > 0 ? bought : read.maybe('order');
    },
  }),
  defineFact({
    id: 'planned-birds',
    unit: 'bird',
    per: 'flock',
    needs: ['only-planned', 'chicks-bought'],
    // Nothing is taken for granted of birds to come while there are birds.
    wants: ['birds-wanted', 'order-loss'],
    compute: (read) => {
      if (read.text('only-planned') === 'no') return undefined;
      const bought = read.number('chicks-bought');
      const lost = Number(read.maybe('order-loss') ?? 0);
      return bought > 0 ? Math.floor(bought * (1 - lost)) : read.maybe('birds-wanted');
    },
  }),
  defineFact({
    id: 'planned-feed',
    unit: 'kg',
    per: 'flock',
    needs: ['planned-chicks'],
    wants: ['order-kind', 'wanted-carcass'],
    figures: ['process/dressing', 'feed/conversion-usual'],
    compute: (read) => {
      const kind = read.maybe('order-kind');
      const carcass = read.maybe('wanted-carcass');
      if (typeof kind !== 'string' || typeof carcass !== 'number') return undefined;
      const live = carcass / read.figure('process/dressing', [kind]);
      // Those that are lost are counted as eating to the end: it is on the safe side.
      return read.number('planned-chicks') * live * read.figure('feed/conversion-usual', [kind]);
    },
  }),
  defineFact({
    id: 'planned-bags',
    unit: 'bag',
    per: 'flock',
    needs: ['planned-feed', 'bag-mass'],
    wants: ['feed-left'],
    compute: (read) =>
      bagsFor(read.number('planned-feed') - Number(read.maybe('feed-left') ?? 0), read.number('bag-mass')),
  }),
  defineFact({
    id: 'planned-feed-cost',
    unit: 'money',
    per: 'flock',
    needs: ['planned-bags', 'bag-price'],
    compute: (read) => timesMoney(read.number('bag-price'), read.number('planned-bags')),
  }),
  defineFact({
    id: 'planned-cost',
    unit: 'money',
    per: 'flock',
    needs: ['planned-feed-cost', 'planned-fees', 'spent'],
    compute: (read) =>
      sumMoney([read.number('planned-feed-cost'), read.number('planned-fees'), read.number('spent')]),
  }),
  defineFact({
    id: 'planned-fees',
    unit: 'money',
    per: 'flock',
    needs: ['planned-birds'],
    compute: (read) =>
      timesMoney(settingNumber(read, 'processing-fee') ?? 0, Math.round(read.number('planned-birds'))),
  }),
  defineFact({
    id: 'planned-chicks-paid',
    unit: 'money',
    per: 'flock',
    compute: (read) => {
      const paid = read.state.purchases.filter(({ what, price }) => what === 'chicks' && price !== null);
      read.from(...paid);
      return paid.length === 0 ? undefined : sumMoney(paid.map(({ price }) => price ?? 0));
    },
  }),
  defineFact({
    id: 'planned-per-bird',
    unit: 'money',
    per: 'flock',
    needs: ['planned-cost', 'planned-birds'],
    compute: (read) =>
      read.number('planned-birds') > 0
        ? timesMoney(read.number('planned-cost'), 1 / read.number('planned-birds'))
        : undefined,
  }),
  ...againstPrice({
    cost: 'planned-per-bird',
    margin: 'planned-margin',
    short: 'planned-short',
    withMargin: 'planned-with-margin',
  }),
];
