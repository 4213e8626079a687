/** Orders, freezer room and a year's need against numbers that were worked out elsewhere. */
import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { chanceOf, smallestOrder } from '../../engine/facts/planning/chances.ts';
import type { Setting, Supposition } from '../../engine/types.ts';
import { toBase } from '../../engine/units.ts';
import { stateOf } from '../helpers/state-of.ts';
import { bookForTests, workOut } from '../helpers/work-out.ts';

const known = (loss: number) => ({ loss, restsOn: null });
const set = (what: string, value: number, unit?: string): readonly Setting[] => [
  {
    what,
    value: unit === undefined ? value : toBase(bookForTests.units, { value, unit }),
    size: null,
    said: '',
    on: '2026-05-01',
    line: 9,
  },
];
const told = (fact: string, value: number): Supposition => ({ what: { fact }, value, adds: false });
const inUnit = (value: unknown, unit: string): number =>
  Number(value) / toBase(bookForTests.units, { value: 1, unit });

describe('orders: pure arithmetic, worked out independently', () => {
  test.each([
    [55, 50, 0.05, 0.944],
    [55, 50, 0.1, 0.5244],
  ])('of %i at least %i live at a loss of %d with a chance of %d', (order, wanted, loss, chance) => {
    expect(Math.abs(chanceOf(order, wanted, known(loss)) - chance)).toBeLessThan(0.0005);
    expect(chanceOf(order, wanted, known(loss))).toBeCloseTo(
      1 - jStat.binomial.cdf(wanted - 1, order, 1 - loss),
      10,
    );
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
  ])('%i alive at a loss of %d, %d sure: order %i', (wanted, loss, certainty, order) => {
    const supposing = [told('birds-wanted', wanted), told('order-loss', loss), told('certainty', certainty)];
    expect(smallestOrder(wanted, certainty, known(loss))).toBe(order);
    expect(workOut(stateOf({ groups: [] }), undefined, supposing).step('order', null).value).toBe(order);
  });
});

describe('freezer', () => {
  const fifty = (share: number) =>
    workOut(stateOf({ settings: { 'wanted-carcass': set('wanted-carcass', 4.5, 'lb') } }), undefined, [
      told('birds-to-freeze', 50),
      told('share-cut-up', share),
    ]);

  test('50 birds of 4.5 lb in parts take 6.43 ft³ at 35 lb/ft³ (Fraser & Lackey, North Carolina State University, 2004)', () => {
    expect(inUnit(fifty(1).step('volume-needed', null).value, 'ft3')).toBeCloseTo(6.43, 2);
  });

  test('whole they take 9 ft³ at 25 lb/ft³ (own judgement)', () => {
    expect(inUnit(fifty(0).step('volume-needed', null).value, 'ft3')).toBeCloseTo(9, 2);
  });

  test('a freezer of 15 ft³ takes 30 lb a day, 225 lb in 8 days (USDA, relayed in two appliance manuals)', () => {
    const settings = {
      freezer: set('freezer', 15, 'ft3'),
      'wanted-carcass': set('wanted-carcass', 4.5, 'lb'),
    };
    const workings = workOut(stateOf({ settings }), undefined, [told('birds-to-freeze', 50)]);
    expect(inUnit(workings.step('freeze-a-day', null).value, 'lb')).toBeCloseTo(30, 6);
    expect(workings.step('freeze-days', null).value).toBe(8);
  });
});

test('52 birds of 4.68 lb are 243.4 lb (derived) and take 6.95 ft³ at 35 lb/ft³', () => {
  const settings = {
    'birds-a-week': set('birds-a-week', 1),
    'wanted-carcass': set('wanted-carcass', 4.68, 'lb'),
  };
  const workings = workOut(stateOf({ settings }));
  expect(workings.step('birds-for-eating', null).value).toBe(52);
  expect(inUnit(workings.step('meat-for-eating', null).value, 'lb')).toBeCloseTo(243.4, 1);
  const parts = workOut(stateOf({ settings, groups: [] }), undefined, [
    told('birds-to-freeze', 52),
    told('share-cut-up', 1),
  ]);
  expect(Math.abs(inUnit(parts.step('volume-needed', null).value, 'ft3') - 6.95)).toBeLessThan(0.01);
});

test('a household of four on a bird a week stays below the average of the United States (68.1 lb, USDA ERS, 2021, relayed)', () => {
  const boneless = workOut(stateOf()).step('boneless-each', null).value;
  expect(inUnit(boneless, 'lb')).toBeGreaterThan(30);
  expect(inUnit(boneless, 'lb')).toBeLessThan(68.1);
});
