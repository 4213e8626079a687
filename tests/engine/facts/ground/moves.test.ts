/** Moves of the pen: wanted, due, made, missed and to come, counted by hand. */
import { describe, expect, test } from 'vitest';
import type { PenMove, WeatherDay } from '../../../../engine/types.ts';
import { move, onGrass, out } from '../../../helpers/ground-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const on = '2026-06-10';
const rain = (day: string, value: number): Record<string, WeatherDay> => ({
  [day]: { on: day, low: null, high: null, rain: { on: day, line: 9, value }, wind: null, humidity: null },
});

describe('moves wanted in a day', () => {
  // Once a day as published in CIAS 57, twice for the last two weeks from memory, and twice on wet ground (MOFGA 2002).
  test.each([
    ['fast', '2026-06-11', 1],
    ['fast', '2026-06-12', 2],
    ['slow', '2026-07-02', 1],
    ['slow', '2026-07-03', 2],
  ])('for %s birds on %s are %d', (kind, day, moves) => {
    expect(worth(onGrass({ on: day }, { kind }), 'moves-wanted')).toBe(moves);
  });

  test('are two on the day of rain and on the day after', () => {
    const movesAfter = (day: string, mm: number) =>
      worth(onGrass({ weather: rain(day, mm) }), 'moves-wanted');
    expect([
      movesAfter(on, 2),
      movesAfter('2026-06-09', 2),
      movesAfter('2026-06-08', 9),
      movesAfter(on, 1.9),
    ]).toEqual([2, 2, 1, 1]);
  });
});

describe('moves due today', () => {
  const due = (rhythm: number | null, last: string) =>
    workOut(
      onGrass({ moves: [move(last, 20)] }),
      on,
      rhythm === null ? [] : [{ what: { fact: 'moves-a-day' }, value: rhythm, adds: false }],
    ).step('moves-due', 'whites').value;

  test('are those wanted, where no other rhythm is supposed', () => {
    expect(due(null, '2026-06-09')).toBe(1);
  });

  test('of every other day are one when two days have gone by, and of every third when three have', () => {
    expect([due(1 / 2, '2026-06-09'), due(1 / 2, '2026-06-08'), due(1 / 2, '2026-06-05')]).toEqual([0, 1, 1]);
    expect([due(1 / 3, '2026-06-08'), due(1 / 3, '2026-06-07')]).toEqual([0, 1]);
  });
});

describe('moves on record', () => {
  test('today are those of this group and of all groups, and coming out counts as one', () => {
    const moves = [
      move(on, 20),
      move(on, 21, { group: 'whites' }),
      move(on, 22, { group: 'reds' }),
      move('2026-06-09', 19),
    ];
    expect(worth(onGrass({ moves }), 'moves-today')).toBe(2);
    expect(worth(onGrass({ moves }, { whereabouts: [out(on)] }), 'moves-today')).toBe(3);
    expect(worth(onGrass({ moves }, { whereabouts: [out(on, 12, true)] }), 'moves-today')).toBe(2);
  });

  test('today stand on their own lines, that of coming out among them', () => {
    const linesOf = (outOn: string): readonly number[] =>
      workOut(onGrass({ moves: [move(on, 20)] }, { whereabouts: [out(outOn)] }))
        .step('moves-today', 'whites')
        .entries.map(({ line }) => line);
    expect([linesOf(on), linesOf('2026-06-09')]).toEqual([[12, 20], [20]]);
  });

  test('so far are those since they came out', () => {
    const moves = [move('2026-06-02', 18), move('2026-06-03', 19), move(on, 20)];
    expect(worth(onGrass({ moves }), 'moves-made')).toBe(2);
    expect(worth(onGrass({ moves }, { whereabouts: [] }), 'moves-made')).toBe(0);
  });

  test('are held against one for each day from the day after they came out to yesterday', () => {
    const days = ['2026-06-04', '2026-06-05', '2026-06-06', '2026-06-07', '2026-06-08', '2026-06-09'];
    const missed = (moved: readonly string[]) =>
      worth(onGrass({ moves: moved.map((day, index) => move(day, 20 + index)) }), 'moves-missed');
    expect([missed(days), missed(days.slice(2)), missed([...days.slice(1), on])]).toEqual([0, 2, 1]);
    expect(worth(onGrass({}, { whereabouts: [] }), 'moves-missed')).toBe(0);
  });
});

describe('moves to come', () => {
  const needed = (ready: string, moves: readonly PenMove[] = [], rhythm: readonly number[] = []) =>
    workOut(onGrass({ moves }), on, [
      { what: { fact: 'ready-on' }, value: ready, adds: false },
      ...rhythm.map((value) => ({ what: { fact: 'moves-a-day' }, value, adds: false })),
    ]);

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

  test('of another rhythm are kept at it to the end', () => {
    expect(needed('2026-06-15', [], [1 / 2]).step('moves-needed', 'whites').value).toBe(3);
  });

  test('spread what the birds leave over all the ground they will have had', () => {
    // Worked by hand: 50 birds leave 0.2 lb each on 1 + 0 + 8 places of 12 m².
    const perHectare = (50 * 0.2 * 0.45359237) / ((9 * 12) / 10_000);
    expect(needed('2026-06-15').step('nitrogen-load', 'whites').value).toBeCloseTo(perHectare, 6);
  });

  test('that are fewer leave more on each piece of ground', () => {
    const [daily, everyOther] = [[], [1 / 2]].map((rhythm) =>
      Number(needed('2026-06-15', [], rhythm).step('nitrogen-load', 'whites').value),
    );
    expect((everyOther ?? 0) / (daily ?? 1)).toBeCloseTo(9 / 4, 9);
  });
});
