import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hoursBetween } from '../../../../engine/facts/clock.ts';
import type { State, Supposition, WeatherDay } from '../../../../engine/types.ts';
import { settingsOf } from '../../../helpers/settings-of.ts';
import { stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const on = '2026-06-20';
const heat = (value: number): Record<string, WeatherDay> => ({
  [on]: { on, low: null, high: { on, line: 5, value }, rain: null, wind: null, humidity: null },
});
const flock = (given: Partial<State> = {}, more: Parameters<typeof settingsOf>[0] = {}): State =>
  stateOf({ on: '2026-06-10', settings: settingsOf({ 'process-on': on, ...more }), ...given });

describe('the clock', () => {
  test('is counted back from the start and on from it', () => {
    const state = flock({}, { 'process-at': '07:30', helpers: 3, plucker: true });
    const times = [
      'feed-off-earliest',
      'feed-off',
      'feed-off-latest',
      'set-up-at',
      'catch-at',
      'process-start',
      'finish',
      'chilled-by',
      'freeze-from',
    ];
    expect(Object.fromEntries(times.map((id) => [id, worth(state, id)]))).toEqual({
      'feed-off-earliest': '2026-06-19T19:30',
      'feed-off': '2026-06-19T21:30',
      'feed-off-latest': '2026-06-19T23:30',
      'set-up-at': '2026-06-20T06:30',
      'catch-at': '2026-06-20T06:30',
      'process-start': '2026-06-20T07:30',
      // 50 birds at 4 people and 6 birds an hour
      finish: '2026-06-20T09:35',
      'chilled-by': '2026-06-20T15:35',
      'freeze-from': '2026-06-21T09:35',
    });
  });

  test('takes the feed away earlier where great heat is on record, and not on a warm day', () => {
    expect(worth(flock({ weather: heat(32.3) }), 'feed-off')).toBe('2026-06-19T20:00');
    expect(worth(flock({ weather: heat(32.2) }), 'feed-off')).toBe('2026-06-19T22:00');
  });

  test('keeps a figure of the keeper within what is safe', () => {
    const own = { on: '2026-05-02', line: 4, figure: 'process/feed-off', reason: '' };
    const state = flock({ ownFigures: [{ ...own, quantity: { value: 20, unit: 'h' } }] });
    expect(worth(state, 'feed-off')).toBe('2026-06-19T20:00');
  });

  test('goes over midnight rightly for any start', () => {
    const clock = fc.tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 }));
    fc.assert(
      fc.property(clock, ([hour, minute]) => {
        const at = [hour, minute].map((part) => String(part).padStart(2, '0')).join(':');
        const supposing: Supposition[] = [{ what: { fact: 'process-at' }, value: at, adds: false }];
        const workings = workOut(flock(), '2026-06-10', supposing);
        const [off, start] = ['feed-off', 'process-start'].map((id) =>
          String(workings.step(id, 'whites').value),
        );
        expect(hoursBetween(off ?? '', start ?? '')).toBeCloseTo(10, 9);
      }),
      { numRuns: 40 },
    );
  });
});

describe('the work', () => {
  test.each([
    [{ helpers: 1 }, 50 / 6],
    [{ helpers: 3 }, 50 / 12],
    [{ helpers: 3, plucker: true }, 50 / 24],
  ])('%j', (more, hours) => {
    expect(Number(worth(flock({}, more), 'process-span')) * 24).toBeCloseTo(hours, 9);
  });

  test('takes two people plucking by hand where nothing is set, and says so', () => {
    const workings = workOut(flock());
    expect(Number(workings.step('process-span', 'whites').value) * 24).toBeCloseTo(50 / 6, 9);
    expect(workings.steps().flatMap(({ assumed }) => assumed.map(({ id }) => id))).toEqual(
      expect.arrayContaining(['usual-hands', 'plucked-by-hand']),
    );
  });

  test('is spread over as many days as hands can stand', () => {
    const state = flock({}, { helpers: 0 });
    expect([worth(state, 'process-days'), worth(state, 'birds-a-day')]).toEqual([3, 17]);
  });

  test('never takes longer with another pair of hands', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 }), (helpers) => {
        const span = (count: number) => Number(worth(flock({}, { helpers: count }), 'process-span'));
        expect(span(helpers + 1)).toBeLessThan(span(helpers));
      }),
      { numRuns: 12 },
    );
  });
});

test('a temperature that is named is the water when it is hot enough to scald, else the air', () => {
  const supposed = (value: number) =>
    workOut(flock(), '2026-06-10', [{ what: { fact: 'temperature-told' }, value, adds: false }]);
  const both = (value: number) =>
    ['scald-temperature', 'process-high'].map((id) =>
      Math.round(Number(supposed(value).step(id, 'whites').value)),
    );
  expect([both(60), both(30)]).toEqual([
    [60, 29],
    [63, 30],
  ]);
});
