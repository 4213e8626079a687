/** Every chance that planning tells, as it stands in an answer, against jstat, a reference library for statistics. */
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import type { Answer, Supposition } from '../../engine/types.ts';
import { ask, flockOf, type Line } from '../helpers/flock-of.ts';

const told = (fact: string, value: number | string): Supposition => ({
  what: { fact },
  value,
  adds: false,
});

const valueIn = (answer: Answer, fact: string, group: string | null = null): number => {
  const step = answer.workings.find((each) => each.fact === fact && each.group === group);
  if (step?.value === null || step === undefined) throw new Error(`${fact} was not worked out`);
  return Number(step.value);
};

const arrive = (group: string, on: string, count: number, bird = 'fast'): Line => ({
  kind: 'arrive',
  on,
  group,
  count,
  bird,
  hatched: addDays(on, -1),
});

/** Chance of at least so many, summed from jstat's own terms. */
const atLeast = (least: number, most: number, chanceOf: (count: number) => number): number => {
  let sum = 0;
  for (let count = least; count <= most; count += 1) sum += chanceOf(count);
  return sum;
};

const binomialOf = (trials: number, share: number) => (count: number) =>
  jStat.binomial.pdf(count, trials, share);

const betaBinomialOf = (trials: number, a: number, b: number) => (count: number) =>
  Math.exp(
    jStat.combinationln(trials, count) + jStat.betaln(a + count, b + trials - count) - jStat.betaln(a, b),
  );

const sizes = ['two-fewer', 'one-fewer', 'two-more'];

/** The orders that an answer tells of with the chance it tells of each. */
const tableOf = (answer: Answer): readonly (readonly [number, number])[] => [
  [valueIn(answer, 'birds-wanted'), valueIn(answer, 'chance-without-extras')],
  [valueIn(answer, 'order'), valueIn(answer, 'order-chance')],
  ...sizes.map((size) => [valueIn(answer, `order-${size}`), valueIn(answer, `chance-${size}`)] as const),
];

describe('the table of orders', () => {
  test.each([
    [26, 0.9],
    [50, 0.9],
    [50, 0.95],
    [12, 0.99],
  ])('for %i birds, %d sure, is the binomial at the loss on file', async (wanted, certainty) => {
    const answer = await ask(flockOf(), 'order-size', '2026-03-01', {
      supposing: [told('birds-wanted', wanted), told('certainty', certainty)],
    });
    const loss = valueIn(answer, 'order-loss');
    const chance = (order: number): number => atLeast(wanted, order, binomialOf(order, 1 - loss));
    for (const [order, said] of tableOf(answer)) expect(said).toBeCloseTo(chance(order), 9);
    const order = valueIn(answer, 'order');
    expect([chance(order) >= certainty, chance(order - 1) < certainty]).toEqual([true, true]);
  });

  test('after own flocks is the beta-binomial: the table counts as so many birds, and theirs are added', async () => {
    const flock = flockOf(
      arrive('early', '2025-04-02', 60),
      { kind: 'loss', on: '2025-04-20', group: 'early', count: 9 },
      { kind: 'process', on: '2025-06-05', group: 'early', count: 51 },
    );
    const answer = await ask(flock, 'order-size', '2026-03-01', { supposing: [told('birds-wanted', 40)] });
    const loss = valueIn(answer, 'order-loss');
    const past = valueIn(answer, 'past-exposure');
    const figure = answer.workings
      .flatMap(({ figures }) => figures)
      .find(({ id }) => id === 'losses/table-counts-as');
    const birds = Number(figure?.value) + past;
    expect(past).toBeGreaterThan(40);
    for (const [order, said] of tableOf(answer)) {
      const chance = atLeast(40, order, betaBinomialOf(order, (1 - loss) * birds, loss * birds));
      expect(said).toBeCloseTo(chance, 8);
      // Not being sure of the share widens what may come of it.
      expect(Math.abs(said - atLeast(40, order, binomialOf(order, 1 - loss)))).toBeGreaterThan(0.001);
    }
  });
});

describe('the chance of the wanted carcass by a weekend', () => {
  test.each(['2026-05-20', '2026-06-08'])(
    'on %s is the normal of the lead in weight over its spread',
    async (on) => {
      const flock = flockOf(arrive('whites', '2026-04-19', 30));
      const answer = await ask(flock, 'process-when', on);
      const spread = valueIn(answer, 'flock-ratio-spread', 'whites');
      for (const weekend of ['first', 'second', 'third']) {
        const day = answer.workings.find(({ fact }) => fact === `${weekend}-weekend`)?.value;
        const then = await ask(flock, 'meat-yield', on, { supposing: [told('yield-on', String(day))] });
        const lead = Math.log(
          valueIn(then, 'yield-live', 'whites') / valueIn(then, 'live-for-wanted', 'whites'),
        );
        expect(valueIn(answer, `${weekend}-weekend-chance`, 'whites')).toBeCloseTo(
          jStat.normal.cdf(lead / spread, 0, 1),
          6,
        );
      }
    },
  );
});

describe('birds that promises may count on', () => {
  const surely = (certainty: number, most: number, chanceOf: (count: number) => number): number => {
    let count = most;
    while (count > 0 && atLeast(count, most, chanceOf) < certainty) count -= 1;
    return count;
  };

  test.each([0.5, 0.9, 0.99])(
    'of one group, %d sure, are the most that the binomial leaves so surely',
    async (certainty) => {
      const answer = await ask(flockOf(arrive('whites', '2026-05-02', 40)), 'shares', '2026-05-20', {
        supposing: [told('certainty', certainty)],
      });
      const loss = valueIn(answer, 'loss-to-come', 'whites');
      expect(loss).toBeGreaterThan(0.01);
      expect(valueIn(answer, 'birds-to-count-on')).toBe(surely(certainty, 40, binomialOf(40, 1 - loss)));
    },
  );

  test('of two groups are counted together, each with its own losses to come', async () => {
    const flock = flockOf(arrive('whites', '2026-05-02', 25), arrive('reds', '2026-03-20', 20, 'slow'));
    const answer = await ask(flock, 'shares', '2026-05-20');
    const [whites, reds] = ['whites', 'reds'].map((group) => 1 - valueIn(answer, 'loss-to-come', group));
    expect(whites).not.toBeCloseTo(Number(reds), 3);
    const ofReds = binomialOf(20, Number(reds));
    const both = (count: number): number =>
      atLeast(
        Math.max(0, count - 20),
        Math.min(25, count),
        (of) => binomialOf(25, Number(whites))(of) * ofReds(count - of),
      );
    expect(valueIn(answer, 'birds-to-count-on')).toBe(surely(valueIn(answer, 'certainty'), 45, both));
  });
});
