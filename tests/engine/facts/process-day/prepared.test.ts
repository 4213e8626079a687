/** Room in the freezer and hands for a processing day: 25 lb of whole birds to the cubic foot, 3 birds an hour by hand, 8 hours a day. */
import { describe, expect, test } from 'vitest';
import type { Group, State } from '../../../../engine/types.ts';
import { settingsOf } from '../../../helpers/settings-of.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const cubicFoot = 28.316846592;
const pound = 0.45359237;
const perFoot = (25 * pound) / cubicFoot;

const flock = (settings: Record<string, number | string | boolean>, ...groups: readonly Group[]): State =>
  stateOf({ on: '2026-06-10', groups: [group(), ...groups], settings: settingsOf(settings) });

const of = (state: State, fact: string, name = 'whites'): number =>
  Number(worth(state, fact, state.on, name));

describe('freezer room', () => {
  test('for the birds is their carcass on the day at what a foot holds, and what is over is lacking', () => {
    const state = flock({ freezer: 7 * cubicFoot, 'process-on': '2026-07-01' });
    const meat = 50 * of(state, 'carcass-on-the-day');
    expect(of(state, 'room-on-the-day')).toBeCloseTo(meat / perFoot, 9);
    expect(of(state, 'room-by-then')).toBeCloseTo(7 * cubicFoot, 9);
    expect(of(state, 'room-lacking')).toBeCloseTo(meat - 7 * 25 * pound, 9);
    expect(of(flock({ freezer: 40 * cubicFoot }), 'room-lacking')).toBe(0);
  });

  test('goes first to those processed first, and on the same day to those that came first', () => {
    const reds = group({ name: 'reds', line: 2, boxed: 20 });
    const state = flock({ freezer: 14 * cubicFoot, 'process-on': '2026-07-01' }, reds);
    expect(of(state, 'room-by-then')).toBeCloseTo(14 * cubicFoot, 9);
    expect(of(state, 'room-by-then', 'reds')).toBeCloseTo(
      14 * cubicFoot - of(state, 'room-on-the-day', 'whites'),
      9,
    );
    const late = group({ name: 'late', line: 2, hatched: '2026-06-01', arrived: '2026-06-02' });
    const two = flock({ freezer: 14 * cubicFoot }, late);
    expect(of(two, 'room-by-then')).toBeCloseTo(14 * cubicFoot, 9);
    expect(of(two, 'room-by-then', 'late')).toBeCloseTo(14 * cubicFoot - of(two, 'room-on-the-day'), 9);
  });

  test('is not known while no freezer is', () => {
    expect(worth(flock({}), 'room-lacking')).toBeNull();
  });

  test('and days to freeze: 2 lb a day for each cubic foot of the freezer', () => {
    const state = flock({ freezer: 14 * cubicFoot, 'process-on': '2026-07-01' });
    const pounds = (50 * of(state, 'carcass-on-the-day')) / pound;
    expect(of(state, 'freeze-days-then')).toBe(Math.ceil(pounds / 28));
  });
});

describe('hands', () => {
  test.each([
    [50, 1, 3],
    [50, 2, 3],
    [48, 2, 2],
    [24, 1, 1],
    [25, 1, 2],
    [200, 3, 9],
  ])('%d birds with %d at hand want %d', (boxed, hands, wanted) => {
    const state = stateOf({
      on: '2026-06-10',
      groups: [group({ boxed })],
      settings: settingsOf({ helpers: hands - 1 }),
    });
    expect([of(state, 'hands-wanted'), of(state, 'hands-lacking')]).toEqual([
      wanted,
      Math.max(0, wanted - hands),
    ]);
  });

  test('go twice as far with a drum plucker', () => {
    expect(of(flock({ helpers: 1, plucker: true }), 'hands-wanted')).toBe(2);
  });
});

describe('the day for the table', () => {
  test('is the day set, and all that is counted to the end goes by it', () => {
    const set = flock({ 'process-on': '2026-07-04' });
    const ready = String(worth(flock({}), 'ready-on'));
    expect(ready).not.toBe('2026-07-04');
    expect([worth(set, 'table-day'), worth(set, 'table-until'), worth(set, 'feed-wanted-until')]).toEqual([
      '2026-07-04',
      '2026-07-04',
      '2026-07-03',
    ]);
    expect([worth(flock({}), 'table-day'), worth(flock({}), 'table-until')]).toEqual([ready, ready]);
    const birds = of(set, 'birds-to-come');
    expect(of(set, 'carcass-in-all')).toBeCloseTo(birds * of(set, 'carcass-on-the-day'), 9);
    expect(of(set, 'meat-to-freeze')).toBeCloseTo(50 * of(set, 'carcass-on-the-day'), 9);
  });

  test('is where a batch on record ends in a plan for the season', () => {
    const set = flock({ 'process-on': '2026-07-04' });
    expect(worth(set, 'batch-process')).toBe('2026-07-04');
    const young = group({ hatched: '2026-06-01', arrived: '2026-06-02' });
    const early = stateOf({
      on: '2026-06-10',
      groups: [young],
      settings: settingsOf({ 'process-on': '2026-06-20' }),
    });
    expect(String(worth(early, 'batch-process')) > '2026-07-12').toBe(true);
  });
});

test('a batch only planned is done at the pace of the keeper, where one is on record', () => {
  const own = (quantity: State['ownFigures'][number]['quantity']): State['ownFigures'] => [
    { figure: 'process/birds-per-hour', at: 'no', quantity, reason: 'as seen', on: '2026-06-01', line: 9 },
  ];
  const hours = (ownFigures: State['ownFigures']): number => {
    const state = { ...flock({ helpers: 2 }), ownFigures };
    const planned = workOut(state, state.on, [{ what: { fact: 'batch-birds' }, value: 45, adds: false }]);
    return Number(planned.step('batch-work', null).value) * 24;
  };
  expect(hours([])).toBeCloseTo(5, 9);
  expect(hours(own({ value: 5, unit: 'bird-per-hour' }))).toBeCloseTo(3, 9);
});
