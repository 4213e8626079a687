import { describe, expect, test } from 'vitest';
import type { Group, State } from '../../../../engine/types.ts';
import { settingsOf } from '../../../helpers/settings-of.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const flock = (given: Partial<State> = {}, of: Partial<Group> = {}): State =>
  stateOf({ on: '2026-06-10', groups: [group(of)], ...given });

describe('the processing day', () => {
  test('is the day that is set', () => {
    const state = flock({ settings: settingsOf({ 'process-on': '2026-06-20' }) });
    expect([worth(state, 'process-date'), worth(state, 'days-to-process')]).toEqual(['2026-06-20', 10]);
  });

  test('is the day they should be ready where none is set, and that is said', () => {
    const state = flock();
    const ready = worth(state, 'ready-on');
    expect(worth(state, 'process-date')).toBe(ready);
    expect(workOut(state).step('process-due', 'whites').assumed).toContainEqual({
      id: 'processed-when-ready',
      group: 'whites',
      values: { on: { value: ready, unit: 'date' } },
    });
    expect(worth(state, 'days-to-process')).toBeNull();
  });

  test('is tomorrow at the earliest for birds that are ready', () => {
    expect(worth(flock({ on: '2026-08-01' }), 'process-date')).toBe('2026-08-02');
  });

  test('that is set does not mean birds that are too young for it, nor one that is over', () => {
    const settings = settingsOf({ 'process-on': '2026-06-20' });
    const young = flock({ settings }, { hatched: '2026-06-01', arrived: '2026-06-02' });
    expect(worth(young, 'process-booked')).toBeNull();
    expect(worth(flock({ settings, on: '2026-06-21' }), 'process-booked')).toBeNull();
  });

  test('of birds that never come to the wanted weight is the end of their usual time', () => {
    const state = flock({ settings: settingsOf({ 'wanted-carcass': 9 }) });
    expect(worth(state, 'ready-on')).toBeNull();
    expect(worth(state, 'process-date')).toBe(worth(state, 'window-closes'));
  });

  test('is asked for where nothing can tell it', () => {
    const state = flock({}, { kind: 'curly' });
    expect(workOut(state).step('process-date', 'whites').missing).toContainEqual({
      fact: 'process-due',
      group: 'whites',
    });
  });
});

test('the next to be processed are those whose day comes first', () => {
  const reds = group({ name: 'reds', kind: 'slow' });
  const state = flock({ groups: [group(), reds] });
  expect([worth(state, 'next-to-process'), worth(state, 'next-to-process', state.on, 'reds')]).toEqual([
    'yes',
    'no',
  ]);
});

test('birds kept back are not for the day', () => {
  const kept = [{ on: '2026-06-01', line: 3, count: 6, until: null }];
  expect(worth(flock({}, { kept }), 'birds-on-the-day')).toBe(44);
});
