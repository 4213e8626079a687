/** Money in exact decimals, held against whole hundredths in integers. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  lessMoney,
  partMoney,
  shareMoney,
  sumMoney,
  timesMoney,
} from '../../../../engine/facts/sums/exact-money.ts';

const cents = fc.integer({ min: 0, max: 10_000_000 });
const text = (amount: number): string =>
  `${Math.floor(amount / 100)}.${String(amount % 100).padStart(2, '0')}`;
const centsOf = (amount: number): bigint => BigInt(Math.round(amount * 100));

describe('sums', () => {
  test('are exact where binary fractions are not', () => {
    expect(sumMoney(['0.10', '0.20'])).toBe(0.3);
    expect(sumMoney(Array.from({ length: 10 }, () => '0.10'))).toBe(1);
    expect(sumMoney([])).toBe(0);
    expect(lessMoney(0.3, 0.1)).toBe(0.2);
  });

  test('come out as whole hundredths do', () => {
    fc.assert(
      fc.property(fc.array(cents, { maxLength: 40 }), (amounts) => {
        const whole = amounts.reduce((sum, each) => sum + BigInt(each), 0n);
        expect(centsOf(sumMoney(amounts.map(text)))).toBe(whole);
      }),
    );
  });
});

describe('products and parts', () => {
  test.each([
    [19.5, 14, 273],
    ['21.99', 3, 65.97],
    // Half a hundredth goes up, also where the binary number lies a hair below it.
    [1.005, 1, 1.01],
    ['0.15', 240, 36],
  ])('%s times %s is %s', (amount, times, product) => {
    expect(timesMoney(amount, times)).toBe(product);
  });

  test.each([
    [23.1, 3.6, 6.42],
    [100, 3, 33.33],
    ['200.00', 3, 66.67],
  ])('%s divided by %s is %s', (amount, by, part) => {
    expect(partMoney(amount, by)).toBe(part);
  });
});

describe('shares', () => {
  test.each([
    ['100.00', [1, 1, 1], [33.34, 33.33, 33.33]],
    ['0.02', [1, 1, 1], [0.01, 0.01, 0]],
    ['90.00', [40, 25], [55.38, 34.62]],
    ['10.00', [0, 5], [0, 10]],
    ['10.00', [0, 0], [0, 0]],
  ])('of %s by %j are %j', (amount, weights, parts) => {
    expect(shareMoney(amount, weights)).toEqual(parts);
  });

  test('add up to the whole to the hundredth, and are never a hundredth off their exact part', () => {
    const weights = fc
      .array(fc.integer({ min: 0, max: 5000 }), { minLength: 1, maxLength: 12 })
      .filter((list) => list.some((each) => each > 0));
    fc.assert(
      fc.property(cents, weights, (amount, list) => {
        const parts = shareMoney(text(amount), list);
        const all = list.reduce((sum, each) => sum + each, 0);
        expect(parts.reduce((sum, each) => sum + centsOf(each), 0n)).toBe(BigInt(amount));
        parts.forEach((part, index) => {
          expect(Math.abs(part * 100 - (amount * (list[index] ?? 0)) / all)).toBeLessThan(1.000001);
        });
      }),
    );
  });
});
