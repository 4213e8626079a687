/** Live weight and carcass: dressing shares as relayed from Grower Guidelines 2007 and Ask Extension 2014 (fast 72 %, slow 68 %; chosen between, derived). */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import type { Supposition } from '../../engine/types.ts';
import { group, stateOf } from '../helpers/state-of.ts';
import { workOut, worth } from '../helpers/work-out.ts';

const pound = 0.45359237;
const live = (pounds: number): Supposition => ({
  what: { fact: 'live-weight' },
  value: pounds * pound,
  adds: false,
});

describe('6.5 lb alive', () => {
  test.each([
    ['fast', 4.68],
    ['slow', 4.42],
  ])('%s: %f lb dressed', (kind, dressed) => {
    const state = stateOf({ on: '2026-07-01', groups: [group({ kind })] });
    const carcass = Number(workOut(state, state.on, [live(6.5)]).step('carcass-weight', 'whites').value);
    expect(Math.abs(carcass / pound - dressed)).toBeLessThan(0.01);
  });
});

describe('a carcass of 5 lb', () => {
  test.each([
    ['fast', 6.94],
    ['slow', 7.35],
  ])('%s: ready at %f lb alive', (kind, alive) => {
    const settings = {
      'wanted-carcass': [
        { what: 'wanted-carcass', value: 5 * pound, on: '2026-05-02', line: 2, size: null, said: '5 lb' },
      ],
    };
    const state = stateOf({ on: '2026-06-20', groups: [group({ kind })], settings });
    const isReady = (pounds: number): boolean => {
      const workings = workOut(state, state.on, [live(pounds)]);
      return workings.step('ready-on', 'whites').value === null
        ? false
        : String(workings.step('ready-on', 'whites').value) <= state.on;
    };
    expect([isReady(alive - 0.01), isReady(alive + 0.01)]).toEqual([false, true]);
  });
});

test('fast birds in trials dressed to 4.71 lb (PNW 665, mean of five years); the plan line is there in the ninth week', () => {
  const settings = {
    'wanted-carcass': [
      { what: 'wanted-carcass', value: 4.71 * pound, on: '2026-05-02', line: 2, size: null, said: '' },
    ],
  };
  const ready = String(worth(stateOf({ settings }), 'ready-on'));
  expect(ready >= addDays('2026-05-01', 56) && ready <= addDays('2026-05-01', 63)).toBe(true);
});
