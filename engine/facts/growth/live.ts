/** What the birds weigh, now or on any day of their lives: the plan line times how the flock grows, with an honest range. */
import { defineFact, type Reader } from '../define.ts';
import { halfWidth } from '../sums/normal.ts';
import { driftADay } from './flock.ts';
import { type Curve, planCurve, planFigures, planNeeds } from './plan.ts';

/** Live weight by age in days, kg: the best guess and the range that holds it with the certainty of the figure. */
export interface Pace {
  readonly middle: Curve;
  readonly low: Curve;
  readonly high: Curve;
  /** Standard deviation of the logarithm of the flock's mean at an age. */
  readonly spread: (age: number) => number;
  /** Age in days at which the plan line ends; it is held level from there. */
  readonly ends: number;
}

/** What a fact must declare to use `flockPace`. */
export const paceNeeds = [
  'age',
  'weighed',
  'live-weight',
  'table-weight',
  'flock-ratio-spread',
  ...planNeeds,
];
export const paceFigures = [...planFigures, 'growth/drift', 'growth/range-certainty'];

const rangeWidth = (read: Reader): number => halfWidth(read.figure('growth/range-certainty'));

/** The flock's way through the weights. It starts from `live-weight`, so that a supposition about that carries on. */
export const flockPace = (read: Reader): Pace => {
  const plan = planCurve(read);
  const ratio = read.number('live-weight') / read.number('table-weight');
  const now = read.number('flock-ratio-spread') ** 2;
  // Without a weighing the spread is that of flocks at any age; after one, what it said grows stale.
  const drift = read.yes('weighed') ? driftADay(read) : 0;
  const width = rangeWidth(read);
  const spread = (age: number): number => Math.sqrt(Math.max(0, now + drift * (age - read.number('age'))));
  const factor = (age: number): number => Math.exp(width * spread(age));
  const middle: Curve = (age) => plan(age) * ratio;
  const [, lastWeek] = read.spanOf('growth/derived-weight', [read.text('growth-line')]);
  return {
    middle,
    low: (age) => middle(age) / factor(age),
    high: (age) => middle(age) * factor(age),
    spread,
    ends: lastWeek * 7,
  };
};

export const liveFacts = [
  defineFact({
    id: 'live-weight',
    unit: 'kg',
    needs: ['table-weight', 'flock-ratio'],
    compute: (read) => {
      if (read.on > read.asked) read.assume('growth-keeps-pace');
      return read.number('table-weight') * read.number('flock-ratio');
    },
  }),
  defineFact({
    id: 'live-weight-low',
    unit: 'kg',
    needs: ['live-weight', 'flock-ratio-spread'],
    figures: ['growth/range-certainty'],
    compute: (read) =>
      read.number('live-weight') * Math.exp(-rangeWidth(read) * read.number('flock-ratio-spread')),
  }),
  defineFact({
    id: 'live-weight-high',
    unit: 'kg',
    needs: ['live-weight', 'flock-ratio-spread'],
    figures: ['growth/range-certainty'],
    compute: (read) =>
      read.number('live-weight') * Math.exp(rangeWidth(read) * read.number('flock-ratio-spread')),
  }),
];
