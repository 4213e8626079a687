/** The feed that all batches will still eat, in bags to buy and in money. */
import { defineFact } from '../define.ts';
import { bagsFor } from '../feed/bags.ts';
import { timesMoney } from '../sums/exact-money.ts';

export const toEndFacts = [
  defineFact({
    id: 'feed-to-end',
    unit: 'kg',
    per: 'flock',
    each: ['feed-to-come'],
    compute: (read) => {
      const parts = read.each('feed-to-come').map(({ value }) => value);
      return parts.some((each) => each === undefined)
        ? undefined
        : parts.reduce<number>((sum, each) => sum + Number(each), 0);
    },
  }),
  defineFact({
    id: 'bags-to-end',
    unit: 'bag',
    per: 'flock',
    needs: ['feed-to-end', 'bag-mass'],
    wants: ['feed-left'],
    compute: (read) =>
      bagsFor(read.number('feed-to-end') - Number(read.maybe('feed-left') ?? 0), read.number('bag-mass')),
  }),
  defineFact({
    id: 'feed-to-end-cost',
    unit: 'money',
    per: 'flock',
    needs: ['bags-to-end'],
    wants: ['bag-price'],
    compute: (read) => {
      if (read.number('bags-to-end') === 0) return 0;
      const price = read.maybe('bag-price');
      return price === undefined ? undefined : timesMoney(Number(price), read.number('bags-to-end'));
    },
  }),
];
