/** How batches turned out, and what made one dearer than another. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { causesOf } from '../../../../engine/facts/money/beside.ts';
import type { Line } from '../../../helpers/flock-of.ts';
import { ask, flockOf } from '../../../helpers/flock-of.ts';

const batch = (
  name: string,
  year: number,
  given: { lost: number; dressed: string; feed: string; price: string },
): readonly Line[] => [
  { kind: 'buy', on: `${year}-05-02`, what: 'chicks', count: 40, price: '100.00' },
  {
    kind: 'arrive',
    on: `${year}-05-02`,
    group: name,
    count: 41,
    dead: 1,
    bird: 'fast',
    hatched: `${year}-05-01`,
  },
  { kind: 'buy', on: `${year}-05-02`, what: 'feed', bags: '10 bag', amount: given.feed, price: given.price },
  ...(given.lost === 0
    ? []
    : [{ kind: 'loss', on: `${year}-05-20`, group: name, count: given.lost, cause: 'hawk' }]),
  { kind: 'process', on: `${year}-06-26`, group: name, count: 40 - given.lost, dressed: given.dressed },
];

const first = batch('first', 2025, { lost: 0, dressed: '160 lb', feed: '500 lb', price: '300.00' });

const resultsOf = async (engine: ReturnType<typeof flockOf>, name: string, on = '2026-08-01') => {
  const answer = await ask(engine, 'batch-result', on, { groups: [name] });
  const [part] = answer.parts;
  return {
    rule: part?.rule,
    remarks: part?.remarks.map((each) => each.rule),
    ...Object.fromEntries(answer.results.map(({ id, value }) => [id, value])),
  };
};

describe('a batch', () => {
  test('that is done: 40 of 40, 500 lb of feed and 400.00 over 160 lb, 56 days', async () => {
    const pound = 0.45359237;
    const result = await resultsOf(flockOf(...first), 'first');
    expect(result).toEqual({
      rule: 'batch-result/done',
      remarks: ['batch-result/budget-fast'],
      survival: 1,
      'feed-ratio': expect.closeTo(500 / 160, 9),
      carcass: expect.closeTo(4 * pound, 9),
      'per-weight': expect.closeTo(2.5 / pound, 9),
      days: 56,
    });
  });

  test('of which some still grow, and one of which all do, are told so', async () => {
    const some = first.map((line) => (line.kind === 'process' ? { ...line, count: 30 } : line));
    expect((await resultsOf(flockOf(...some), 'first', '2025-07-01')).rule).toBe('batch-result/part-done');
    const none = first.filter(({ kind }) => kind !== 'process');
    expect(await resultsOf(flockOf(...none), 'first', '2025-06-01')).toEqual({
      rule: 'batch-result/still-growing',
      remarks: [],
      survival: 1,
    });
  });

  test('that was lost is told so', async () => {
    const lost = first.map((line) =>
      line.kind === 'process' ? { kind: 'loss', on: line.on, group: 'first', count: 40, cause: 'fox' } : line,
    );
    expect((await resultsOf(flockOf(...lost), 'first')).rule).toBe('batch-result/none-left');
  });

  test.each([
    ['losses', { lost: 8, dressed: '128 lb', feed: '400 lb', price: '240.00' }],
    ['the-price-of-feed', { lost: 0, dressed: '160 lb', feed: '500 lb', price: '400.00' }],
    ['feed-eaten', { lost: 0, dressed: '160 lb', feed: '650 lb', price: '390.00' }],
  ])('dearer than the one before for %s is told that', async (cause, given) => {
    const engine = flockOf(...first, ...batch('second', 2026, given));
    const answer = await ask(engine, 'batch-result', '2026-08-01', { groups: ['second'] });
    expect(answer.parts[0]?.remarks.map(({ rule }) => rule)).toEqual([
      'batch-result/budget-fast',
      'batch-result/dearer-than-others',
      'batch-result/others-beside',
    ]);
    expect(answer.workings.find(({ fact }) => fact === 'largest-cause')?.value).toBe(cause);
  });

  test('cheaper than the one before is told that', async () => {
    const better = { lost: 0, dressed: '180 lb', feed: '500 lb', price: '300.00' };
    const engine = flockOf(...first, ...batch('second', 2026, better));
    expect((await resultsOf(engine, 'second')).remarks).toContain('batch-result/cheaper-than-others');
  });
});

describe('causes of a difference', () => {
  test('add up to the whole of it', () => {
    const amount = fc.double({ min: 0.1, max: 10, noNaN: true });
    const make = fc.record({
      feedRatio: amount,
      feedPrice: amount,
      rest: amount,
      survival: fc.double({ min: 0.1, max: 1, noNaN: true }),
      carcass: amount,
    });
    fc.assert(
      fc.property(make, make, (own, other) => {
        const price = (of: typeof own): number =>
          of.feedRatio * of.feedPrice + of.rest / (of.survival * of.carcass);
        const sum = Object.values(causesOf(own, other)).reduce((all, each) => all + each, 0);
        expect(sum).toBeCloseTo(price(own) - price(other), 6);
      }),
    );
  });
});
