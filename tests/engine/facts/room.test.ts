/** Room by age, place and weight, and the day it gets tight. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Group, Setting, State, Supposition } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const squareFoot = 0.09290304;
const feet = (area: unknown): number => Number(area) / squareFoot;

const settings = (values: Readonly<Record<string, number>>): State['settings'] =>
  Object.fromEntries(
    Object.entries(values).map(([what, value]) => [
      what,
      [{ what, value, on: '2026-05-01', line: 20, size: null, said: '' }] satisfies Setting[],
    ]),
  );
const out = (given: Partial<Group> = {}): Group =>
  group({ whereabouts: [{ on: '2026-05-22', line: 9, place: 'pen', daysOnly: false }], ...given });
const inBrooder = (square: number, given: Partial<State> = {}): State =>
  stateOf({ settings: settings({ brooder: square * squareFoot }), ...given });
const inPen = (square: number, given: Partial<State> = {}): State =>
  stateOf({ on: '2026-05-25', groups: [out()], settings: settings({ pen: square * squareFoot }), ...given });

describe('in the brooder', () => {
  test('fifty of a week on 40 ft² have 0.8 ft² each and want half a foot', () => {
    const state = inBrooder(40);
    expect(feet(worth(state, 'area-per-bird'))).toBeCloseTo(0.8, 9);
    expect(feet(worth(state, 'room-wanted'))).toBeCloseTo(0.5, 9);
    expect([worth(state, 'fit'), worth(state, 'over-fit')]).toEqual([80, 0]);
  });

  test('it gets tight on the day the table has more than they have', () => {
    // 0.8 ft² each is enough for the ¾ ft² from three weeks on, too little for the 1 ft² from five.
    expect(worth(inBrooder(40), 'tight-by-age-on')).toBe(addDays('2026-05-01', 35));
    expect(worth(inBrooder(40), 'room-lasts')).toBe('for-now');
    expect(worth(inBrooder(30), 'tight-on')).toBe(addDays('2026-05-01', 21));
  });

  test('tight already is tight today, with what is lacking', () => {
    const state = inBrooder(20);
    expect([worth(state, 'room-lasts'), worth(state, 'tight-on'), worth(state, 'over-fit')]).toEqual([
      'tight',
      state.on,
      10,
    ]);
    expect(feet(worth(state, 'area-short'))).toBeCloseTo(5, 9);
  });

  test('all groups in it share it', () => {
    const reds = group({ name: 'reds', line: 2, boxed: 30 });
    expect(worth(inBrooder(40, { groups: [group(), reds] }), 'sharing')).toBe(80);
  });
});

describe('in the pen', () => {
  test('a bird wants a foot and a half until its weight wants more', () => {
    expect(feet(worth(inPen(100), 'room-wanted'))).toBeCloseTo(1.5, 9);
    // 9 lb birds want 1.8 ft², at no more than 5 lb a foot.
    const heavy: Supposition[] = [{ what: { fact: 'live-weight' }, value: 9 * 0.45359237, adds: false }];
    const wanted = workOut(inPen(100), '2026-05-25', heavy).step('room-wanted', 'whites').value;
    expect(feet(wanted)).toBeCloseTo(1.8, 9);
  });

  test('two pens are twice the room', () => {
    const two = inPen(60, { settings: settings({ pen: 60 * squareFoot, pens: 2 }) });
    expect(feet(worth(two, 'area-per-bird'))).toBeCloseTo(2.4, 9);
  });

  test('with room for the whole of their life there is no day on which it gets tight', () => {
    const state = inPen(120);
    expect([worth(state, 'tight-on'), worth(state, 'room-lasts')]).toEqual([null, 'to-the-end']);
  });

  test('a count and a size that are supposed stand in for what is on record', () => {
    const supposing: Supposition[] = [
      { what: { fact: 'sharing' }, value: 24, adds: false },
      { what: { fact: 'room-area' }, value: 64 * squareFoot, adds: false },
    ];
    const each = workOut(inPen(10), '2026-05-25', supposing).step('area-per-bird', 'whites').value;
    expect(feet(each)).toBeCloseTo(64 / 24, 9);
  });
});

test('a size not told is asked for', () => {
  const { missing } = workOut(stateOf()).step('room-lasts', 'whites');
  expect(missing).toEqual([{ fact: 'room-area', group: 'whites' }]);
});

test('birds gone want none', () => {
  const gone = group({ processed: [{ on: '2026-05-07', line: 8, count: 50, dressed: null }] });
  expect(worth(inBrooder(40, { groups: [gone] }), 'area-per-bird')).toBeNull();
});

test('more room never gets tight earlier, and never fits fewer', () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 120 }), fc.integer({ min: 0, max: 60 }), (square, more) => {
      const [small, large] = [inBrooder(square), inBrooder(square + more)];
      expect(Number(worth(large, 'fit'))).toBeGreaterThanOrEqual(Number(worth(small, 'fit')));
      const never = '9999-12-31';
      expect(String(worth(large, 'tight-on') ?? never) >= String(worth(small, 'tight-on') ?? never)).toBe(
        true,
      );
    }),
    { numRuns: 40 },
  );
});
