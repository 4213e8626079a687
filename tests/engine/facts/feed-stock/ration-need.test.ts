/** Feed in hand and to buy by ration, over birds that change from starter to grower at three weeks and to finisher at six. */
import { describe, expect, test } from 'vitest';
import { addDays, type Day } from '../../../../engine/day.ts';
import type { Purchase, State } from '../../../../engine/types.ts';
import { bought, setTo } from '../../../helpers/bought.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth, worthUntil } from '../../../helpers/work-out.ts';

const hatched = '2026-05-01';
const on = addDays(hatched, 35);
const rations = ['starter', 'grower', 'finisher'];

const bags = (
  day: Day,
  ration: string | null,
  mass: number,
  price: string | null = null,
  line = 50,
): Purchase => bought(day, 'feed', price, { ration, mass, bags: 1, line });

const flock = (purchases: readonly Purchase[], given: Partial<State> = {}): State =>
  stateOf({ on, groups: [group({ arrived: hatched })], purchases, ...given });

const fact = (state: State, id: string) => worth(state, id, on, null);
const until = addDays(on, 13);
const toBuy = (state: State, id: string) => worthUntil(state, id, until, null);

describe('feed in hand', () => {
  test('of each ration is what was bought of it less what birds of that age took', () => {
    const state = flock([bags(hatched, 'starter', 60), bags(hatched, 'grower', 100)]);
    const [starter, grower] = ['starter', 'grower'].map((each) => Number(worth(state, `${each}-taken`)));
    expect(Number(worth(state, 'feed-taken'))).toBeCloseTo(Number(starter) + Number(grower), 9);
    expect(fact(state, 'starter-left')).toBeCloseTo(60 - Number(starter), 9);
    expect(fact(state, 'grower-left')).toBeCloseTo(100 - Number(grower), 9);
    expect(fact(state, 'feed-left')).toBeCloseTo(160 - Number(starter) - Number(grower), 9);
  });

  test('after a count is of no named ration, but for what was bought since', () => {
    const state = flock([bags(hatched, 'starter', 60), bags(on, 'finisher', 40, null, 90)], {
      settings: { 'feed-in-stock': setTo('feed-in-stock', 30, on) },
    });
    expect(['starter', 'grower', 'finisher', 'plain'].map((each) => fact(state, `${each}-left`))).toEqual([
      0, 0, 40, 30,
    ]);
  });
});

test('a stock that is only supposed is of no named ration', () => {
  const state = flock([bags(on, 'grower', 20)]);
  const supposed = workOut(state, on, [{ what: { fact: 'feed-left' }, value: 70, adds: false }]);
  expect(
    ['starter', 'grower', 'finisher', 'plain'].map((each) => supposed.step(`${each}-left`, null).value),
  ).toEqual([0, 0, 0, 70]);
});

describe('what to buy', () => {
  test('is counted by ration once a ration was named and more than one is in hand or wanted', () => {
    expect(toBuy(flock([bags(on, 'grower', 20)]), 'rations-apart')).toBe('yes');
    expect(toBuy(flock([bags(on, null, 20)]), 'rations-apart')).toBe('no');
    expect(worthUntil(flock([bags(on, 'grower', 20)]), 'rations-apart', addDays(on, 2), null)).toBe('no');
  });

  test('of each ration is what its birds want beyond what suits them, a begun bag counted whole', () => {
    const state = flock([bags(on, 'grower', 20), bags(on, 'starter', 5, null, 51)]);
    const [grower, finisher] = ['grower', 'finisher'].map((each) => Number(toBuy(state, `${each}-needed`)));
    // Grower birds eat the starter up first, since nobody else will.
    expect(toBuy(state, 'grower-lacking')).toBeCloseTo(Number(grower) - 25, 9);
    expect(toBuy(state, 'finisher-lacking')).toBeCloseTo(Number(finisher), 9);
    const bag = Number(fact(state, 'bag-mass'));
    const counts = [0, Math.ceil((Number(grower) - 25) / bag), Math.ceil(Number(finisher) / bag)];
    expect(rations.map((each) => toBuy(state, `${each}-bags`))).toEqual(counts);
    expect(toBuy(state, 'bags-to-buy')).toBe(counts.reduce((sum, each) => sum + each));
    expect(toBuy(state, 'bags-by-ration')).toBe(`grower=${counts[1]} finisher=${counts[2]}`);
    expect(toBuy(state, 'finisher-runs-out')).toBe(addDays(hatched, 42));
  });

  test('is more than feed in hand and feed wanted tell where what is in hand suits nobody', () => {
    const chicks = group({ name: 'chicks', hatched: on, arrived: on, line: 2 });
    const state = flock([bags(on, 'finisher', 900)], { groups: [chicks] });
    const needed = Number(toBuy(state, 'feed-needed'));
    expect(needed).toBeLessThan(900);
    expect(toBuy(state, 'starter-lacking')).toBeCloseTo(needed, 9);
    expect(toBuy(state, 'bags-to-buy')).toBe(Math.ceil(needed / 900));
  });

  test('costs what was last paid for a bag of each ration, and a price set since holds for all', () => {
    const paid = [bags(on, 'grower', 20, '19.50'), bags(on, 'finisher', 20, '17.25', 51)];
    const state = flock(paid);
    const [grower, finisher] = ['grower', 'finisher'].map((each) => Number(toBuy(state, `${each}-bags`)));
    expect(Number(grower) * Number(finisher)).toBeGreaterThan(0);
    expect(toBuy(state, 'bags-cost')).toBe(Number(grower) * 19.5 + Number(finisher) * 17.25);
    const settings = { 'feed-price': [{ ...setTo('feed-price', 22, on)[0], line: 99 }] } as State['settings'];
    expect(toBuy(flock(paid, { settings }), 'bags-cost')).toBe((Number(grower) + Number(finisher)) * 22);
  });

  test('names what is over for the older birds', () => {
    const state = flock([bags(on, 'starter', 30), bags(on, 'grower', 20, null, 51)]);
    expect(toBuy(state, 'ration-to-use-up')).toBe('starter');
    expect(toBuy(flock([bags(on, 'grower', 20)]), 'ration-to-use-up')).toBe('');
  });
});
