/** Bodies along lanes, followed by hand: lanes of 12 lengths of 3, so that each takes four bodies. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Lanes, nextLane, type Stride, walkLanes } from '../../../../engine/facts/sums/path.ts';

const lanes: Lanes = { count: 3, length: 12, body: 3, rest: 100 };
const sets = (who = 'a', at = 0, lane: number | null = null): Stride => ({
  who,
  does: 'sets',
  at,
  lane,
  by: null,
});
const goes = (at: number, given: Partial<Stride> = {}): Stride => ({
  who: 'a',
  does: 'goes',
  at,
  lane: null,
  by: null,
  ...given,
});
const leaves = (at: number, who = 'a'): Stride => ({ who, does: 'leaves', at, lane: null, by: null });
const days = (count: number, first = 1): Stride[] => Array.from({ length: count }, (_, n) => goes(first + n));
const walk = (strides: readonly Stride[], now = 50) => walkLanes(lanes, strides, now);

describe('one body', () => {
  test('goes along its lane, turns at the end, and comes back along the next', () => {
    const at = (count: number) => walk([sets(), ...days(count)]).spots.a;
    expect([0, 1, 3, 4, 7, 8].map(at)).toEqual([
      { lane: 1, from: 0, away: true, ahead: 3 },
      { lane: 1, from: 3, away: true, ahead: 2 },
      { lane: 1, from: 9, away: true, ahead: 0 },
      { lane: 2, from: 0, away: false, ahead: 3 },
      { lane: 2, from: 9, away: false, ahead: 0 },
      { lane: 3, from: 0, away: true, ahead: 3 },
    ]);
  });

  test('has no spot once nothing is left, and finds one again when a lane has rested', () => {
    expect(walk([sets(), ...days(12)]).spots).toEqual({});
    expect(walk([sets(), ...days(12), goes(104)]).spots.a).toEqual({
      lane: 1,
      from: 0,
      away: true,
      ahead: 3,
    });
  });

  test('goes as far as was said', () => {
    expect(walk([sets(), goes(1, { by: 1.5 })]).spots.a?.from).toBe(1.5);
    expect(walk([sets(), goes(1, { by: 8 }), goes(2)]).spots.a).toMatchObject({ lane: 2, from: 0 });
  });

  test('goes into the lane that was named, on from where it was walked to, and stays in it when that is its own', () => {
    expect(walk([sets(), goes(1, { lane: 3 })]).spots.a).toMatchObject({ lane: 3, from: 0 });
    expect(walk([sets(), goes(1, { lane: 3 }), goes(2, { lane: 1 })]).spots.a).toMatchObject({
      lane: 1,
      from: 3,
    });
    expect(walk([sets(), goes(1, { lane: 1 })]).spots.a).toMatchObject({ lane: 1, from: 3 });
    expect(walk([sets(), goes(1, { lane: 9 })]).spots).toEqual({});
  });

  test('lies at the beginning of a lane that was named although it is used up', () => {
    expect(walk([sets(), ...days(4), goes(5, { lane: 1 })]).spots.a).toMatchObject({ lane: 1, from: 0 });
  });

  test('leaves what it has not walked for the next', () => {
    const field = walk([sets(), goes(1), leaves(2), sets('b', 3)]);
    expect(field.spots).toEqual({ b: { lane: 1, from: 6, away: true, ahead: 1 } });
    expect(field.lanes[0]).toEqual({ used: 50, room: 1 });
  });
});

describe('lanes', () => {
  test('know when they were last used and what room they have', () => {
    expect(walk([sets(), ...days(5)]).lanes).toEqual([
      { used: 4, room: 0 },
      { used: 50, room: 2 },
      { used: null, room: 4 },
    ]);
  });

  test('have all their room again when they have rested, not a day before', () => {
    const laneAt = (now: number) => walk([sets(), ...days(2), leaves(3)], now).lanes[0];
    expect([laneAt(102), laneAt(103)]).toEqual([
      { used: 3, room: 1 },
      { used: 3, room: 4 },
    ]);
  });

  test('measured to the same length twice lose nothing to rounding', () => {
    expect(walkLanes({ count: 1, length: 0.3, body: 0.1, rest: 1 }, [], 0).lanes[0]?.room).toBe(3);
  });
});

describe('two bodies', () => {
  const both = [sets('a'), sets('b', 1), ...days(4, 2)];

  test('take a lane each, and the first to turn passes the other by', () => {
    const field = walk(both);
    expect([field.spots.a, field.spots.b]).toEqual([
      { lane: 3, from: 0, away: false, ahead: 3 },
      { lane: 2, from: 0, away: true, ahead: 3 },
    ]);
  });

  test('are never sent into the same lane', () => {
    const field = walk([sets('a'), sets('b', 1)]);
    expect(nextLane(field, 'a')).toBe(3);
    expect(nextLane(field, 'b', [3])).toBeUndefined();
    expect(nextLane(walk(both), 'a')).toBeUndefined();
  });
});

test('no lane takes more bodies than fit in it, and each stride takes at most one', () => {
  const stride = fc.record({
    who: fc.constantFrom('a', 'b'),
    does: fc.constantFrom('sets', 'goes', 'leaves'),
    lane: fc.constant(null),
    by: fc.constant(null),
  });
  fc.assert(
    fc.property(fc.array(stride, { maxLength: 30 }), (all) => {
      const strides = all.map((each, at): Stride => ({ ...each, at }));
      const roomOf = (count: number): number =>
        walk(strides.slice(0, count)).lanes.reduce((sum, { room }) => sum + room, 0);
      const rooms = Array.from({ length: strides.length + 1 }, (_, count) => roomOf(count));
      expect(rooms[0]).toBe(12);
      rooms.forEach((room, n) => {
        expect(room).toBeGreaterThanOrEqual(0);
        if (n > 0) expect((rooms[n - 1] ?? 0) - room).toBeOneOf([0, 1]);
      });
      const lying = Object.values(walk(strides).spots).map(({ lane }) => lane);
      expect(new Set(lying).size).toBe(lying.length);
    }),
    { numRuns: 100 },
  );
});
