/** Which ration comes next, how much of each is still to come, and what is counted beside feed. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { State } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth, worthUntil } from '../../helpers/work-out.ts';

const hatched = '2026-05-01';
const flock = (age: number, given: Partial<State> = {}): State =>
  stateOf({ on: addDays(hatched, age), groups: [group({ arrived: hatched })], ...given });
const rations = ['starter', 'grower', 'finisher'];

describe('rations to come', () => {
  test('are what they eat until the day before they are ready, by the ration of the day', () => {
    const state = flock(10);
    const last = addDays(String(worth(state, 'ready-on')), -1);
    const each = rations.map((ration) => Number(worth(state, `${ration}-to-come`)));
    expect(each).toEqual(rations.map((ration) => worthUntil(state, `${ration}-over-span`, last)));
    const all = Number(worthUntil(state, 'feed-over-span', last));
    expect(each.reduce((sum, one) => sum + one, 0)).toBeCloseTo(all, 9);
    expect(each.every((one) => one > 0)).toBe(true);
  });

  test('have none left of a ration that is behind them', () => {
    expect(worth(flock(30), 'starter-to-come')).toBe(0);
    expect(worth(flock(45), 'grower-to-come')).toBe(0);
  });
});

test.each([
  [5, 'grower', '2026-05-22'],
  [21, 'finisher', '2026-06-12'],
  [42, null, null],
])('at %d days %s comes next, on %s', (age, next, on) => {
  expect(worth(flock(age), 'next-ration')).toBe(next);
  expect(worth(flock(age), 'ration-switch')).toBe(on);
});

describe('beside the feed', () => {
  test('there may be a twentieth of it', () => {
    const state = flock(30);
    expect(worth(state, 'treats-a-day')).toBeCloseTo(Number(worth(state, 'feed-today')) / 20, 12);
  });

  test('a feed in hand is taken to be what their age wants until another is named', () => {
    expect(worth(flock(30), 'protein-in-hand')).toBe(worth(flock(30), 'protein'));
  });

  test('the ration is asked about unless something else is', () => {
    const asked = (fact: string) =>
      workOut(flock(30), undefined, [{ what: { fact }, value: 'yes', adds: false }]).step(
        'asks-for-ration',
        null,
      ).value;
    expect(worth(flock(30), 'asks-for-ration', undefined, null)).toBe(true);
    expect(asked('treats-said')).toBe(false);
    expect(asked('layer-feed-said')).toBe(false);
  });
});
