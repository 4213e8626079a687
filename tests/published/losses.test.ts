/** Losses against published figures and chances that were worked out elsewhere. */
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import { binomialTail } from '../../engine/facts/sums/count-tails.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { worth } from '../helpers/work-out.ts';

/** Fewest chicks of which at least `wanted` live with this certainty. */
const fewestOrdered = (wanted: number, loss: number, certainty: number): number => {
  let order = wanted;
  while (binomialTail(order, 1 - loss, wanted) < certainty) order += 1;
  return order;
};

const usualShare = (age: number, kind = 'fast') =>
  Number(
    worth(
      stateOf({ on: addDays('2026-05-01', age), groups: [group({ kind, arrived: '2026-05-01' })] }),
      'expected-share',
    ),
  );

describe('binomial, pure arithmetic worked out independently', () => {
  test.each([
    [0.05, 0.944],
    [0.1, 0.5244],
  ])('of 55 chicks with %d lost each, at least 50 live with a chance of %d', (loss, chance) => {
    expect(Math.abs(binomialTail(55, 1 - loss, 50) - chance)).toBeLessThan(0.0005);
  });

  test.each([
    [50, 0.05, 0.9, 55],
    [50, 0.08, 0.9, 57],
    [50, 0.1, 0.9, 59],
    [25, 0.05, 0.9, 28],
    [25, 0.08, 0.9, 29],
    [25, 0.1, 0.9, 30],
    [50, 0.05, 0.95, 56],
    [50, 0.08, 0.95, 58],
    [50, 0.1, 0.95, 60],
  ])(
    '%i alive at a loss of %d with a certainty of %d take an order of %i',
    (wanted, loss, certainty, order) => {
      expect(fewestOrdered(wanted, loss, certainty)).toBe(order);
    },
  );
});

describe('losses by age', () => {
  test('the first week has the 2 % that extension texts give for small batches (from memory)', () => {
    expect(usualShare(6)).toBeCloseTo(0.02, 10);
  });

  test('the first week is above the 1.22 to 1.65 % of 4,769 flocks (Chou and others, British Poultry Science, 2004), below 3 %', () => {
    expect(usualShare(6)).toBeGreaterThan(0.0165);
    expect(usualShare(6)).toBeLessThan(0.03);
  });

  test('after day 10 no more than 0.05 % a day (a trade page, read, weak), until they go to grass', () => {
    const perDay = [11, 15, 20, 27].map((age) =>
      Number(worth(stateOf({ on: addDays('2026-05-01', age) }), 'loss-per-day')),
    );
    expect(Math.max(...perDay)).toBeLessThanOrEqual(0.0005);
  });

  test('eight weeks lie between 5 % (United States industry, 2019) and about 10 % (nine pastured farms, APPPA 2002)', () => {
    expect(usualShare(55)).toBeGreaterThan(0.05);
    expect(usualShare(55)).toBeLessThan(0.1);
  });

  test('fast males kept to 154 days have lost half (Poultry Science abstract on birds raised to maturity)', () => {
    expect(usualShare(153)).toBeCloseTo(0.5, 10);
  });
});

test('the table counts for so many birds that 19 of 20 flocks stay below 15 % (derived; jstat)', () => {
  expect(jStat.beta.cdf(0.15, 0.08 * 55, 0.92 * 55)).toBeGreaterThan(0.95);
  expect(jStat.beta.cdf(0.15, 0.08 * 50, 0.92 * 50)).toBeLessThan(0.95);
});
