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
