import { expect, test } from 'vitest';
import { group, stateOf } from '../../helpers/state-of.ts';
import { worth, worthUntil } from '../../helpers/work-out.ts';

test('the next weighing is a round after the last, at an age for the first, and never gone by', () => {
  const weighings = [{ on: '2026-05-20', line: 3, mean: 0.8, count: 5, spread: null }];
  const flock = (on: string, weighed: boolean) =>
    stateOf({ on, groups: [group(weighed ? { weighings } : {})] });
  expect(worth(flock('2026-05-22', true), 'weigh-on')).toBe('2026-05-27');
  expect(worth(flock('2026-05-05', false), 'weigh-on')).toBe('2026-05-15');
  expect(worth(flock('2026-06-20', true), 'weigh-on')).toBe('2026-06-20');
});

test('dates are listed up to the end that is named, else far ahead', () => {
  const state = stateOf({ on: '2026-05-14' });
  expect(worthUntil(state, 'dates-until', '2026-06-01', null)).toBe('2026-06-01');
  expect(worth(state, 'dates-until', state.on, null)).toBe('2026-11-30');
});

test('nobody is weighed of a group that is gone', () => {
  const processed = [{ on: '2026-07-01', line: 4, count: 50, dressed: null }];
  expect(worth(stateOf({ on: '2026-07-02', groups: [group({ processed })] }), 'weigh-on')).toBeNull();
});
