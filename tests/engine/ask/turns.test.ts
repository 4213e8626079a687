/** When an answer turns and by what: whatever is said of it is tried here by asking again. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import { ask, flockOf, type Line, partOf } from '../../helpers/flock-of.ts';
import { arrive, cover, hawk, heatDown, nights, pen, ready, sign, today } from './go-out-flock.ts';

/** How far ahead to look; a day is enough where only today's answer matters. */
const lookAhead = (days: number): Line => ({
  kind: 'figure',
  on: '2026-05-04',
  figure: 'search/look-ahead',
  value: `${days} day`,
  reason: 'for this test',
});

/** Flocks for which the answer is settled today, each another way. */
const flocks: Readonly<Record<string, readonly Line[]>> = {
  'may go': ready,
  'sick today': [...ready, sign('lethargic', today)],
  'hawk and an open pen': [...ready, cover('no'), hawk],
  crowded: [...ready, { ...pen, value: '4 ft x 8 ft' }],
  'cold nights': [arrive, pen, heatDown('2026-05-20'), ...nights('35 F', { high: '60 F' })],
  'warm days and cold nights': [arrive, pen, heatDown('2026-05-20'), ...nights('35 F', { high: '75 F' })],
  'rain today': [arrive, pen, heatDown('2026-05-20'), ...nights('55 F', { rain: '10 mm' })],
  'not yet hardened': [arrive, pen, heatDown('2026-05-28'), ...nights('55 F')],
};

describe.each(Object.entries(flocks))('%s', (_, lines) => {
  test('turns by each change that is named', async () => {
    const flock = flockOf(...lines, lookAhead(1));
    const { verdict, turnsOn } = partOf(await ask(flock, 'go-out', today));
    expect(turnsOn.length).toBeGreaterThan(0);
    for (const turn of turnsOn) {
      const supposing = [{ what: { fact: turn.fact }, value: turn.to, adds: false }];
      const { verdict: then } = partOf(await ask(flock, 'go-out', today, { supposing }));
      expect([turn.fact, turn.to, then]).toEqual([turn.fact, turn.to, turn.verdict]);
      expect(turn.verdict).not.toBe(verdict);
      expect(turn.from).not.toBe(turn.to);
    }
    expect(new Set(turnsOn.map(({ fact }) => fact)).size).toBe(turnsOn.length);
  });
});

describe('names nothing', () => {
  test.each<[string, readonly Line[]]>([
    [
      'where only what nobody can change would turn it',
      [...ready, { kind: 'out', on: '2026-05-28', group: 'reds' }],
    ],
  ])('%s', async (_, lines) => {
    expect(partOf(await ask(flockOf(...lines, lookAhead(1)), 'go-out', today)).turnsOn).toEqual([]);
  });
});

describe('the smallest change', () => {
  const turnOf = async (fact: string, lines: readonly Line[]) =>
    partOf(await ask(flockOf(...lines, lookAhead(1)), 'go-out', today)).turnsOn.find(
      (turn) => turn.fact === fact,
    );

  test('stops where the rule does: on the number where it says at least, a step below where it does not', async () => {
    const lines = flocks['cold nights'] ?? [];
    expect(await turnOf('night-low', lines)).toEqual({
      fact: 'night-low',
      group: null,
      from: expect.closeTo((35 - 32) / 1.8, 9),
      to: expect.closeTo((40 - 32) / 1.8, 9),
      unit: 'C',
      verdict: 'yes',
    });
    // The least is 40 °F at their age, and a whole degree Fahrenheit is the smallest that is shown.
    expect((await turnOf('night-low', ready))?.to).toBeCloseTo((39 - 32) / 1.8, 9);
    expect(await turnOf('days-of-hardening', flocks['not yet hardened'] ?? [])).toMatchObject({
      from: 2,
      to: 5,
    });
  });

  test('comes first', async () => {
    const { turnsOn } = partOf(await ask(flockOf(...(flocks['not yet hardened'] ?? [])), 'go-out', today));
    const shares = turnsOn.map(({ from, to }) =>
      typeof from === 'number' && typeof to === 'number'
        ? Math.abs(to - from) / Math.max(Math.abs(from), Math.abs(to))
        : 1,
    );
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(turnsOn[0]?.fact).toBe('night-low');
  });
});

describe('the first day', () => {
  // A forecast for a month, so that what is looked for ahead is what will be asked then.
  const forecast = (low: string): Line[] =>
    Array.from({ length: 32 }, (_, ahead) => ({
      kind: 'weather',
      on: addDays(today, ahead),
      low,
      rain: '0 mm',
    }));
  const waiting: readonly (readonly [string, readonly Line[], string])[] = [
    [
      'for warmer nights by their age',
      [arrive, pen, heatDown('2026-05-20'), ...forecast('35 F')],
      '2026-06-06',
    ],
    [
      'for the rain to pass',
      [
        arrive,
        pen,
        heatDown('2026-05-20'),
        ...forecast('55 F'),
        { kind: 'weather', on: today, rain: '10 mm' },
      ],
      '2026-05-31',
    ],
    [
      'for feathers',
      [
        { ...arrive, hatched: '2026-05-12', on: '2026-05-13' },
        pen,
        heatDown('2026-05-25'),
        ...forecast('52 F'),
      ],
      '2026-06-05',
    ],
    ['for hardening off', [arrive, pen, heatDown('2026-05-28'), ...forecast('55 F')], '2026-06-02'],
    [
      'for the hawk to be forgotten',
      [arrive, pen, cover('no'), heatDown('2026-05-20'), ...forecast('55 F'), hawk],
      '2026-06-12',
    ],
    [
      'for a fortnight of age',
      [{ ...arrive, hatched: '2026-05-20', on: '2026-05-22' }, pen, ...forecast('66 F')],
      '2026-06-03',
    ],
  ];

  test.each(waiting)(
    'of those who wait %s is the first on which the answer is another',
    async (_, lines, day) => {
      const flock = flockOf(...lines);
      const { verdict, when } = partOf(await ask(flock, 'go-out', today));
      expect([verdict, when?.on, when?.verdict]).toEqual(['no', day, 'yes']);
      const near = flockOf(...lines, lookAhead(1));
      const verdicts: string[] = [];
      for (let on = addDays(today, 1); on <= day; on = addDays(on, 1))
        verdicts.push(partOf(await ask(near, 'go-out', on)).verdict);
      expect(verdicts).toEqual([...verdicts.slice(1).map(() => 'no'), 'yes']);
    },
  );

  test('is given as a result: today when it is yes already, the day it turns, or not at all', async () => {
    const firstDay = async (...lines: readonly Line[]) =>
      (await ask(flockOf(...lines), 'go-out', today)).results.find(({ id }) => id === 'first-day')?.value;
    expect(await firstDay(...ready)).toBe(today);
    expect(await firstDay(...(flocks['not yet hardened'] ?? []))).toBe('2026-06-02');
    expect(await firstDay(...(flocks.crowded ?? []))).toBeUndefined();
  });

  test('says what it rests on where no forecast reaches', async () => {
    const when = partOf(await ask(flockOf(...(flocks['cold nights'] ?? [])), 'go-out', today)).when;
    expect(when?.on).toBe('2026-06-06');
    expect(when?.assumed).toContainEqual({
      id: 'nights-as-before',
      group: null,
      values: {
        low: { value: expect.closeTo((35 - 32) / 1.8, 9), unit: 'C' },
        from: { value: '2026-06-02', unit: 'date' },
      },
    });
  });

  test('is looked for as far ahead as the figure says, and no further', async () => {
    const lines = [arrive, pen, heatDown('2026-05-20'), ...forecast('35 F')];
    const whenWithin = async (days: number) =>
      partOf(await ask(flockOf(...lines, lookAhead(days)), 'go-out', today)).when?.on;
    expect([await whenWithin(6), await whenWithin(7)]).toEqual([undefined, '2026-06-06']);
  });
});
