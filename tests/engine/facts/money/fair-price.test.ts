/** Whether a price covers what a bird comes to, and by how much: whole answers over one batch that is done. */
import { describe, expect, test } from 'vitest';
import type { Supposition } from '../../../../engine/types.ts';
import { ask, flockOf, partOf } from '../../../helpers/flock-of.ts';

const pound = 0.45359237;

/** 40 birds, 400.00 paid, 160 lb dressed: 10.00 a bird and 2.50 a pound. */
const flock = flockOf(
  {
    kind: 'arrive',
    on: '2026-05-02',
    group: 'whites',
    count: 40,
    dead: 0,
    bird: 'fast',
    hatched: '2026-05-01',
  },
  { kind: 'buy', on: '2026-05-02', what: 'chicks', count: 40, price: '100.00' },
  { kind: 'buy', on: '2026-05-02', what: 'feed', bags: '12 bag', amount: '600 lb', price: '300.00' },
  { kind: 'process', on: '2026-07-01', group: 'whites', count: 40, dressed: '160 lb' },
);

const priced = async (...supposing: Supposition[]) => {
  const answer = await ask(flock, 'fair-price', '2026-07-02', { supposing });
  const part = partOf(answer);
  const results = Object.fromEntries(answer.results.map(({ id, value }) => [id, value]));
  return { verdict: part.verdict, rule: part.rule, margin: results.margin, bird: results['break-even-bird'] };
};

const suppose = (fact: string, value: number): Supposition => ({ what: { fact }, value, adds: false });

describe('a price', () => {
  test('is worked out where none is named, with a fifth on top', async () => {
    expect(await priced()).toEqual({
      verdict: 'amount',
      rule: 'fair-price/break-even',
      margin: 2,
      bird: 10,
    });
    expect((await priced(suppose('margin-share', 0.35))).margin).toBe(3.5);
  });

  test.each([
    [15, 'yes', 'fair-price/bird-covers', 5],
    [10, 'yes', 'fair-price/bird-covers', 0],
    [9.99, 'no', 'fair-price/bird-short', -0.01],
  ])('of %d a bird: %s', async (price, verdict, rule, margin) => {
    expect(await priced(suppose('asked-a-bird', price))).toEqual({ verdict, rule, margin, bird: 10 });
  });

  test.each([
    [5, 'yes', 'fair-price/weight-covers', 10],
    [2.5, 'yes', 'fair-price/weight-covers', 0],
    [2, 'no', 'fair-price/weight-short', -2],
  ])('of %d a pound: %s', async (price, verdict, rule, margin) => {
    expect(await priced(suppose('asked-a-weight', price / pound))).toEqual({
      verdict,
      rule,
      margin,
      bird: 10,
    });
  });

  test('leads on to the law', async () => {
    const part = partOf(await ask(flock, 'fair-price', '2026-07-02'));
    expect(part.cautions.map(({ rule }) => rule)).toEqual(['fair-price/law-first']);
  });
});
