/** What birds that are only planned come to, before any have come. */
import { describe, expect, test } from 'vitest';
import type { Line } from '../../../helpers/flock-of.ts';
import { ask, flockOf } from '../../../helpers/flock-of.ts';

const on = '2026-02-14';
const pound = 0.45359237;
const feedPrice: Line = { kind: 'setting', on, what: 'feed-price', value: '22.00' };
const wanted = { what: { fact: 'birds-wanted' }, value: 26, adds: false } as const;

const planOf = async (...lines: readonly Line[]) => {
  const answer = await ask(flockOf(...lines), 'cost', on, { supposing: [wanted] });
  const value = (fact: string) => answer.workings.find((step) => step.fact === fact)?.value;
  return { rule: answer.parts[0]?.rule, value };
};

describe('the cost of birds that are planned', () => {
  test('is feed for every chick at the live weight wanted, in whole bags', async () => {
    const { rule, value } = await planOf(feedPrice);
    // 4.5 lb at 72 % is 6.25 lb alive, times 2.2 of feed (rules of thumb of the rulebook), for each of 31 chicks.
    expect([rule, value('planned-chicks'), value('planned-feed')]).toEqual([
      'cost/planned',
      31,
      expect.closeTo(31 * (4.5 / 0.72) * 2.2 * pound, 6),
    ]);
    // 426.25 lb is 8.5 bags of 50 lb.
    expect([value('planned-bags'), value('planned-cost'), value('planned-per-bird')]).toEqual([9, 198, 7.62]);
  });

  test('counts chicks that are bought for the order, with what was paid for them', async () => {
    const { value } = await planOf(feedPrice, { kind: 'buy', on, what: 'chicks', count: 20, price: '60.00' });
    // 20 less 9.5 % leaves 18 whole birds; 275 lb of feed is 6 bags.
    expect([value('planned-chicks'), value('planned-birds'), value('planned-bags')]).toEqual([20, 18, 6]);
    expect([value('planned-cost'), value('planned-per-bird')]).toEqual([192, 10.67]);
  });

  test('counts the fee that is set for processing each of them', async () => {
    const fee: Line = { kind: 'setting', on, what: 'processing-fee', value: '4.50' };
    const { value } = await planOf(feedPrice, fee);
    // 26 birds at 4.50 are 117.00 beside the 198.00 of feed.
    expect([value('planned-fees'), value('planned-cost'), value('planned-per-bird')]).toEqual([
      117, 315, 12.12,
    ]);
  });

  test('asks for the price of feed, and for nothing else', async () => {
    const answer = await ask(flockOf(), 'cost', on, { supposing: [wanted] });
    expect([answer.parts[0]?.rule, answer.parts[0]?.unknown.map(({ fact }) => fact)]).toEqual([
      'cost/nothing-bought',
      ['bag-price'],
    ]);
  });

  test('is left to the lines of the batch once birds have come', async () => {
    const { rule } = await planOf(feedPrice, {
      kind: 'arrive',
      on,
      group: 'whites',
      count: 20,
      dead: 0,
      bird: 'fast',
      hatched: '2026-02-13',
    });
    expect(rule).not.toBe('cost/planned');
  });
});

describe('a price asked about before any birds have come', () => {
  const chicks: Line = { kind: 'buy', on, what: 'chicks', count: 31, price: '96.00' };
  const asked = async (price: number, ...lines: readonly Line[]) => {
    const named = { what: { fact: 'asked-a-bird' }, value: price, adds: false } as const;
    const answer = await ask(flockOf(...lines), 'fair-price', on, { supposing: [wanted, named] });
    const [part] = answer.parts;
    const value = (fact: string) => answer.workings.find((step) => step.fact === fact)?.value;
    return { told: [part?.verdict, part?.rule, part?.unknown.map(({ fact }) => fact)], value };
  };

  test('is held against feed, chicks and fees of the birds that are planned', async () => {
    // 31 chicks less 9.5 % leave 28 whole birds: 198.00 of feed and 96.00 of chicks are 10.50 each.
    const { told, value } = await asked(15, feedPrice, chicks);
    expect(told).toEqual(['yes', 'fair-price/planned-covers', []]);
    expect([value('planned-per-bird'), value('planned-margin')]).toEqual([10.5, 4.5]);
  });

  test('is too little where it does not even pay the feed', async () => {
    const { told, value } = await asked(3, feedPrice);
    expect(told).toEqual(['no', 'fair-price/planned-short', []]);
    expect(value('planned-short')).toBe(4.62);
  });

  test('asks for what has no price yet, and for nothing else', async () => {
    expect((await asked(15)).told).toEqual([
      'cannot-say',
      'fair-price/planned-open',
      ['bag-price', 'planned-chicks-paid'],
    ]);
    expect((await asked(15, feedPrice)).told).toEqual([
      'cannot-say',
      'fair-price/planned-open',
      ['planned-chicks-paid'],
    ]);
  });
});
