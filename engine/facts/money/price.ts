/** What a bird must bring so that nothing is lost on it, and how a price that was asked about compares. */
import { defineFact, type Fact } from '../define.ts';
import { sumMoney, timesMoney } from '../sums/exact-money.ts';
import { againstPrice } from './against-price.ts';

/** A price that only the words of a question can set. */
const asked = (id: string, unit: string): Fact =>
  defineFact({ id, unit, per: 'flock', compute: () => undefined });

export const priceFacts = [
  asked('asked-a-bird', 'money'),
  asked('asked-a-weight', 'money/kg'),
  defineFact({
    id: 'price-asked',
    unit: null,
    per: 'flock',
    wants: ['asked-a-bird', 'asked-a-weight'],
    compute: (read) => {
      if (read.maybe('asked-a-weight') !== undefined) return 'weight';
      return read.maybe('asked-a-bird') === undefined ? 'none' : 'bird';
    },
  }),
  defineFact({
    id: 'margin-share',
    unit: 'ratio',
    per: 'flock',
    figures: ['money/margin'],
    compute: (read) => read.figure('money/margin'),
  }),
  defineFact({
    id: 'carcass-in-end',
    unit: 'kg',
    per: 'flock',
    needs: ['meat-in-end', 'birds-in-end'],
    compute: (read) =>
      read.number('birds-in-end') > 0 ? read.number('meat-in-end') / read.number('birds-in-end') : undefined,
  }),
  defineFact({
    id: 'price-of-a-bird',
    unit: 'money',
    per: 'flock',
    needs: ['price-asked'],
    wants: [
      'asked-a-bird',
      'asked-a-weight',
      'carcass-in-end',
      'price-with-margin',
      'only-planned',
      'wanted-carcass',
    ],
    compute: (read) => {
      const [bird, weight] = [read.maybe('asked-a-bird'), read.maybe('asked-a-weight')];
      if (read.text('price-asked') === 'bird') return sumMoney([Math.round(Number(bird) * 100) / 100]);
      if (read.text('price-asked') === 'none') return read.maybe('price-with-margin');
      const isPlanned = read.maybe('only-planned') === 'yes';
      const carcass = read.maybe(isPlanned ? 'wanted-carcass' : 'carcass-in-end');
      return carcass === undefined ? undefined : timesMoney(Number(carcass), Number(weight));
    },
  }),
  ...againstPrice({
    cost: 'cost-per-bird',
    margin: 'price-margin',
    short: 'price-short',
    withMargin: 'price-with-margin',
  }),
  defineFact({
    id: 'margin-in-all',
    unit: 'money',
    per: 'flock',
    needs: ['price-margin', 'birds-in-end'],
    compute: (read) => timesMoney(read.number('price-margin'), read.number('birds-in-end')),
  }),
];
