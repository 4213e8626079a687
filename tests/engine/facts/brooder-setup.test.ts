/** What must stand ready, by the number of chicks. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { State } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const squareFoot = 0.09290304;
const inch = 0.0254;
const gallon = 3.785411784;

const coming = (count: number, more: Readonly<Record<string, number>> = {}): State =>
  stateOf({
    groups: [],
    settings: Object.fromEntries(
      Object.entries({ 'chicks-coming': count, ...more }).map(([what, value]) => [
        what,
        [{ what, value, on: '2026-05-01', line: 20, size: null, said: String(value) }],
      ]),
    ),
  });
const flock = (state: State, fact: string): number => Number(worth(state, fact, state.on, null));

test('fifty chicks in a room of 45 °F', () => {
  const state = coming(50, { 'room-temperature': 65 / 9 });
  expect(flock(state, 'setup-floor') / squareFoot).toBeCloseTo(12.5, 9);
  // 3 in of shavings on 12.5 ft².
  expect(flock(state, 'setup-bedding')).toBeCloseTo(12.5 * squareFoot * 3 * inch * 1000, 9);
  expect(flock(state, 'setup-lamps')).toBe(2);
  expect(flock(state, 'setup-drinkers')).toBe(2);
  expect(flock(state, 'first-water') / gallon).toBeCloseTo(2, 9);
  expect(flock(state, 'setup-feeder') / inch).toBeCloseTo(50, 9);
  // 147.5 g by the table, nine tenths of it at home.
  expect(flock(state, 'setup-starter')).toBeCloseTo(50 * 0.1475 * 0.9, 9);
  expect(flock(state, 'setup-starter-bags')).toBe(1);
  expect(flock(state, 'crops-to-feel')).toBe(10);
});

test('neither a room nor a night on record: cold is taken, aloud', () => {
  const step = workOut(coming(50)).step('setup-surroundings', null);
  expect(step.value).toBeCloseTo(40 / 9, 9);
  expect(step.assumed.map(({ id }) => id)).toEqual(['cold-where-they-come']);
});

test('a room as warm as the warm spot wants no lamp', () => {
  expect(flock(coming(50, { 'room-temperature': 35 }), 'setup-lamps')).toBe(0);
});

describe('the floor to spare', () => {
  const brooder = { brooder: 4 };

  test('is what the birds in the brooder do not need', () => {
    // 50 of a week want ½ ft² each.
    const state = { ...coming(50, brooder), groups: [group({ line: 3 })] };
    expect(flock(state, 'brooder-floor-free')).toBeCloseTo(4 - 25 * squareFoot, 9);
  });

  test('counts those that have just come as the ones to make room for', () => {
    const state = { ...coming(50, brooder), groups: [group({ line: 30, arrived: '2026-05-08' })] };
    expect(flock(state, 'brooder-floor-free')).toBe(4);
  });
});

test('more chicks never want less of anything', () => {
  const facts = [
    'setup-floor',
    'setup-bedding',
    'setup-lamps',
    'setup-drinkers',
    'setup-feeder',
    'setup-starter',
    'setup-starter-bags',
  ];
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 50 }), (count, more) => {
      for (const fact of facts)
        expect(flock(coming(count + more), fact), fact).toBeGreaterThanOrEqual(flock(coming(count), fact));
    }),
    { numRuns: 40 },
  );
});
