/** Chicks on their way and just come: what counts as told, when it has had its time, and the clock from the hatch. */
import { describe, expect, test } from 'vitest';
import type { Setting, State } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const set = (what: string, value: number | string, line = 20): State['settings'] => ({
  [what]: [{ what, value, on: '2026-05-01', line, size: null, said: String(value) }] satisfies Setting[],
});
const flock = (state: State, fact: string, on = state.on) => worth(state, fact, on, null);
const assumed = (state: State, fact: string): readonly string[] =>
  workOut(state)
    .step(fact, null)
    .assumed.map(({ id }) => id);

const empty = stateOf({ groups: [] });
const told = stateOf({
  groups: [],
  settings: { ...set('chicks-coming', 50), ...set('chicks-on', '2026-05-12', 21) },
});

describe('chicks to come', () => {
  test('are as told, until birds arrive after that', () => {
    expect(flock(told, 'chicks-coming')).toBe(50);
    expect(flock(told, 'chicks-due')).toBe('2026-05-12');
    const came = { ...told, groups: [group({ line: 30, arrived: '2026-05-08', boxed: 48 })] };
    expect(
      ['chicks-expected', 'chicks-here', 'chicks-coming', 'chicks-due'].map((fact) => flock(came, fact)),
    ).toEqual(['no', 'yes', 48, '2026-05-08']);
  });

  test('told of after an earlier group came, they are still to come', () => {
    const second = { ...told, groups: [group({ line: 3, arrived: '2026-05-08' })] };
    expect([flock(second, 'chicks-coming'), flock(second, 'chicks-here')]).toEqual([50, 'no']);
  });

  test('nobody told of are asked for, with the line that tells of them', () => {
    const { value, missing } = workOut(empty).step('setup-floor', null);
    expect({ value, missing }).toEqual({ value: null, missing: [{ fact: 'chicks-coming', group: null }] });
  });

  test('stand on the round from a week before, and at once where the day is not told', () => {
    expect(flock(told, 'chicks-due-soon', '2026-05-04')).toBe('no');
    expect(flock(told, 'chicks-due-soon', '2026-05-05')).toBe('yes');
    expect(flock(stateOf({ groups: [], settings: set('chicks-coming', 50) }), 'chicks-due-soon')).toBe('yes');
    expect(flock(empty, 'chicks-due-soon')).toBe('no');
  });

  test('the heat is on a day before the morning post, and that hour is said aloud', () => {
    expect(flock(told, 'warm-by')).toBe('2026-05-11T07:00');
    expect(assumed(told, 'warm-by')).toEqual(['chicks-by-morning-post']);
    expect(flock(stateOf({ groups: [], settings: set('chicks-coming', 50) }), 'warm-by')).toBeNull();
  });
});

describe('chicks that came', () => {
  const came = (given: Parameters<typeof group>[0]): State =>
    stateOf({ groups: [group({ hatched: '2026-05-07', arrived: '2026-05-08', ...given })] });

  test('are newly come on that day and the next', () => {
    const state = came({});
    expect(['2026-05-08', '2026-05-09', '2026-05-10'].map((on) => flock(state, 'chicks-here', on))).toEqual([
      'yes',
      'yes',
      'no',
    ]);
    expect(flock(state, 'newcomers')).toBe('whites');
    expect(flock(state, 'newcomers', '2026-05-10')).toBe('chicks');
  });

  test('have 72 hours from the hour of the hatch, counted from the morning post', () => {
    const state = came({ hatchHour: '18:00' });
    expect(flock(state, 'drink-by')).toBe('2026-05-10T18:00');
    // From 07:00 on the 8th to 18:00 on the 10th.
    expect(Number(flock(state, 'hours-left')) * 24).toBeCloseTo(59, 9);
    expect(assumed(state, 'drink-by')).toEqual([]);
    expect(assumed(state, 'hours-left')).toEqual(['counted-from-the-post']);
  });

  test('hatched at an hour not known count from midnight, aloud', () => {
    const state = came({});
    expect(flock(state, 'drink-by')).toBe('2026-05-10T00:00');
    expect(assumed(state, 'drink-by')).toEqual(['hatched-at-midnight']);
  });

  test('that were four days on the way are past their time', () => {
    expect(Number(flock(came({ hatched: '2026-05-04' }), 'hours-left'))).toBeLessThan(0);
  });

  test('their dead in the box are a record of their own, beside those alive', () => {
    const state = came({ boxed: 50, dead: 2 });
    expect(
      ['boxed-chicks', 'dead-in-box', 'dead-in-box-share', 'chicks-coming'].map((fact) => flock(state, fact)),
    ).toEqual([50, 2, 0.04, 48]);
  });

  test('two groups of one box hold together, and the older hatch sets the time', () => {
    const state = stateOf({
      groups: [
        group({ hatched: '2026-05-07', hatchHour: '20:00', arrived: '2026-05-08' }),
        group({
          name: 'reds',
          line: 2,
          boxed: 25,
          hatched: '2026-05-07',
          hatchHour: '06:00',
          arrived: '2026-05-08',
        }),
      ],
    });
    expect([flock(state, 'newcomers'), flock(state, 'chicks-coming'), flock(state, 'drink-by')]).toEqual([
      'whites and reds',
      75,
      '2026-05-10T06:00',
    ]);
  });
});
