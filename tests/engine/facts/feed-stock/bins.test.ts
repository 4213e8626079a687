import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { binOf, bins, emptyStock, feedFrom, leftOf } from '../../../../engine/facts/feed-stock/bins.ts';

const sumOf = (parts: Readonly<Record<string, number>>): number =>
  Object.values(parts).reduce((sum, each) => sum + each, 0);

describe('what is left in each bin', () => {
  test.each([
    ['the own ration', { grower: 50 }, { grower: 20 }, { grower: 30 }],
    ['feed of no named ration when that is empty', { grower: 10, plain: 50 }, { grower: 20 }, { plain: 40 }],
    [
      'then what is for younger birds, the nearest first',
      { starter: 50, grower: 10 },
      { finisher: 15 },
      { starter: 45 },
    ],
    ['then what is for older ones', { finisher: 50 }, { starter: 15 }, { finisher: 35 }],
    [
      'each ration from its own bags before any from those of another',
      { starter: 20, grower: 20 },
      { starter: 20, grower: 20 },
      {},
    ],
    ['never less than nothing', { starter: 5 }, { starter: 20 }, {}],
  ])('%s', (_, put, taken, left) => {
    expect(leftOf({ ...emptyStock(), ...put }, { starter: 0, grower: 0, finisher: 0, ...taken })).toEqual({
      ...emptyStock(),
      ...left,
    });
  });

  test('is together what was there less what was taken, and in no bin below nothing', () => {
    const amount = fc.integer({ min: 0, max: 200 });
    fc.assert(
      fc.property(
        fc.record({ starter: amount, grower: amount, finisher: amount, plain: amount }),
        fc.record({ starter: amount, grower: amount, finisher: amount }),
        (put, taken) => {
          const left = leftOf(put, taken);
          expect(sumOf(left)).toBe(Math.max(0, sumOf(put) - sumOf(taken)));
          expect(Math.min(...Object.values(left))).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('feeding from the bins', () => {
  test('never gives chicks what is for older birds', () => {
    const stock = { ...emptyStock(), grower: 50, finisher: 50 };
    expect(feedFrom(stock, 'starter', 10)).toBe(10);
    expect(stock).toEqual({ ...emptyStock(), grower: 50, finisher: 50 });
  });

  test('gives older birds what is over for younger ones', () => {
    const stock = { ...emptyStock(), starter: 5, grower: 5, finisher: 5, plain: 5 };
    expect(feedFrom(stock, 'finisher', 22)).toBe(2);
    expect(stock).toEqual(emptyStock());
  });
});

test('a name that is no ration for meat birds goes with feed of which none was named', () => {
  expect([...bins.map(binOf), binOf('layer'), binOf(null)]).toEqual([...bins, 'plain', 'plain']);
});
