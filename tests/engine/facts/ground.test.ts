/** The pen's way over the ground, counted by hand: a pen of 12 m² on ground of 240 m². */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Group, PenMove, Setting, State, WeatherDay } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const on = '2026-06-10';
const setting = (what: string, value: number, size: Setting['size'] = null): readonly Setting[] => [
  { on: '2026-05-02', line: 3, what, value, size, said: String(value) },
];
const settings = { pen: setting('pen', 12, [3, 4]), ground: setting('ground', 240) };
const move = (day: string, line: number, of: string | null = null): PenMove => ({
  on: day,
  line,
  group: of,
  distance: null,
  strip: null,
});
const lives = (day: string, daysOnly = false): Group['whereabouts'][number] => ({
  on: day,
  line: 12,
  place: 'pen',
  daysOnly,
});
/** Fifty white birds, forty days old, that went out a week ago. */
const at = (given: Partial<State> = {}, birds: Partial<Group> = {}): State =>
  stateOf({ on, settings, groups: [group({ whereabouts: [lives('2026-06-03')], ...birds })], ...given });
const rain = (day: string, value: number): Record<string, WeatherDay> => ({
  [day]: { on: day, low: null, high: null, rain: { on: day, line: 9, value }, wind: null, humidity: null },
});

describe('moves due in a day', () => {
  // Once a day as published in CIAS 57, twice for the last two weeks from memory, and twice on wet ground (MOFGA 2002).
  test.each([
    ['fast', '2026-06-11', 1],
    ['fast', '2026-06-12', 2],
    ['slow', '2026-07-02', 1],
    ['slow', '2026-07-03', 2],
  ])('for %s birds on %s are %d', (kind, day, moves) => {
    expect(worth(at({ on: day }, { kind }), 'moves-a-day')).toBe(moves);
  });

  test('are two on the day of rain and on the day after', () => {
    const movesAfter = (day: string, mm: number) => worth(at({ weather: rain(day, mm) }), 'moves-a-day');
    expect([
      movesAfter(on, 2),
      movesAfter('2026-06-09', 2),
      movesAfter('2026-06-08', 9),
      movesAfter(on, 1.9),
    ]).toEqual([2, 2, 1, 1]);
  });
});

describe('moves on record', () => {
  test('today are those of this group and of all groups, and coming out counts as one', () => {
    const moves = [move(on, 20), move(on, 21, 'whites'), move(on, 22, 'reds'), move('2026-06-09', 19)];
    expect(worth(at({ moves }), 'moves-today')).toBe(2);
    expect(worth(at({ moves }, { whereabouts: [lives(on)] }), 'moves-today')).toBe(3);
    expect(worth(at({ moves }, { whereabouts: [lives(on, true)] }), 'moves-today')).toBe(2);
  });

  test('so far are those since they came out', () => {
    const moves = [move('2026-06-02', 18), move('2026-06-03', 19), move(on, 20)];
    expect(worth(at({ moves }), 'moves-made')).toBe(2);
    expect(worth(at({ moves }, { whereabouts: [] }), 'moves-made')).toBe(0);
  });
});

describe('ground', () => {
  test('is used up by each coming out and each move of the last year', () => {
    const moves = [move('2025-06-10', 1), move('2025-06-11', 2), move('2026-06-04', 19), move(on, 20)];
    expect(worth(at({ moves }), 'ground-used')).toBe(48);
    expect(
      workOut(at({ moves }))
        .step('ground-used', null)
        .entries.map(({ line }) => line),
    ).toEqual([12, 2, 19, 20]);
  });

  test('leaves so many whole moves, and none below nothing', () => {
    const left = (count: number) =>
      worth(
        at({ moves: Array.from({ length: count }, (_, index) => move('2026-06-05', 100 + index)) }),
        'moves-left',
      );
    expect([left(0), left(18), left(19), left(25)]).toEqual([19, 1, 0, 0]);
  });

  test('of a size that is not a multiple of the pen leaves no half move, and loses none to rounding', () => {
    const left = (ground: number, pen: number) =>
      worth(
        at(
          { settings: { pen: setting('pen', pen), ground: setting('ground', ground) } },
          { whereabouts: [] },
        ),
        'moves-left',
      );
    expect([left(23.9, 12), left(24, 12), left(0.3, 0.1)]).toEqual([1, 2, 3]);
  });

  test('is never more for another move', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), (count) => {
        const moves = Array.from({ length: count }, (_, index) => move('2026-06-05', 100 + index));
        const before = Number(worth(at({ moves }), 'moves-left'));
        expect(worth(at({ moves: [...moves, move(on, 200)] }), 'moves-left')).toBe(Math.max(0, before - 1));
      }),
      { numRuns: 20 },
    );
  });

  test('is asked for where it was never measured', () => {
    expect(workOut(at({ settings: { pen: settings.pen } })).step('moves-left', null).missing).toEqual([
      { fact: 'ground-area', group: null },
    ]);
    expect(workOut(at({ settings: {} })).step('moves-left', null).missing).toEqual([
      { fact: 'ground-area', group: null },
      { fact: 'pen-area', group: null },
    ]);
  });

  test('rests for a year from the last move, or from the day they came out', () => {
    expect(worth(at({ moves: [move('2026-06-05', 20)] }), 'ground-free-on')).toBe('2027-06-05');
    expect(worth(at(), 'ground-free-on')).toBe('2027-06-03');
    expect(worth(at({}, { whereabouts: [] }), 'ground-free-on')).toBeNull();
  });
});

describe('moves to come', () => {
  const needed = (ready: string, moves: readonly PenMove[] = []) =>
    workOut(at({ moves }), on, [{ what: { fact: 'ready-on' }, value: ready, adds: false }]);

  test('are one for each day until they are ready, two from six weeks on, less those made today', () => {
    // On 12 June they are 42 days old: 1 + 1 + 2 + 2 + 2.
    expect(needed('2026-06-15').step('moves-needed', 'whites').value).toBe(8);
    expect(needed('2026-06-15', [move(on, 20)]).step('moves-needed', 'whites').value).toBe(7);
    expect(needed('2026-06-15').step('ground-needed', 'whites').value).toBe(96);
  });

  test('are none when they are ready or past it', () => {
    expect(
      [on, '2026-06-01'].map((ready) => needed(ready, [move(on, 20)]).step('moves-needed', 'whites').value),
    ).toEqual([0, 0]);
  });

  test('spread what the birds leave over all the ground they will have had', () => {
    // Worked by hand: 50 birds leave 0.2 lb each on 1 + 0 + 8 places of 12 m².
    const perHectare = (50 * 0.2 * 0.45359237) / ((9 * 12) / 10_000);
    expect(needed('2026-06-15').step('nitrogen-load', 'whites').value).toBeCloseTo(perHectare, 6);
  });
});

test("the pen's own length is its longer side, known only when it was told as a size", () => {
  expect(worth(at(), 'pen-length')).toBe(4);
  expect(worth(at({ settings: { pen: setting('pen', 12) } }), 'pen-length')).toBeNull();
});
