/** How the price of a bird stands to what a bird costs: the same sums for birds that are here and for birds only planned. */
import { defineFact, type Fact } from '../define.ts';
import { lessMoney, timesMoney } from '../sums/exact-money.ts';

/** The ids of the cost of a bird (money), and of the three facts made of it. */
interface Ids {
  readonly cost: string;
  readonly margin: string;
  readonly short: string;
  readonly withMargin: string;
}

/** What the price leaves on a bird, what it is short by, and the price that leaves the wanted share: all money. */
export const againstPrice = ({ cost, margin, short, withMargin }: Ids): readonly Fact[] => [
  defineFact({
    id: margin,
    unit: 'money',
    per: 'flock',
    needs: ['price-of-a-bird', cost],
    compute: (read) => lessMoney(read.number('price-of-a-bird'), read.number(cost)),
  }),
  defineFact({
    id: short,
    unit: 'money',
    per: 'flock',
    needs: [margin],
    compute: (read) => Math.max(0, -read.number(margin)),
  }),
  defineFact({
    id: withMargin,
    unit: 'money',
    per: 'flock',
    needs: [cost, 'margin-share'],
    compute: (read) => timesMoney(read.number(cost), 1 + read.number('margin-share')),
  }),
];
