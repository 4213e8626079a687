/** Lamps by the heat balance: beside the table, against common practice, and the way it leans with every condition. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Setting, State } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { worth } from '../../helpers/work-out.ts';

const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const squareFeet = 0.09290304;

interface Place {
  readonly birds?: number;
  readonly age?: number;
  readonly low?: number;
  readonly kind?: string;
  readonly settings?: Readonly<Record<string, number | boolean>>;
}

const place = ({ birds = 50, age = 7, low = 40, kind = 'fast', settings = {} }: Place): State => {
  const on = addDays('2026-05-01', age);
  const set = (what: string, value: number | boolean): readonly Setting[] => [
    { what, value, on, line: 3, size: null, said: String(value) },
  ];
  return stateOf({
    on,
    groups: [group({ boxed: birds, kind })],
    weather: {
      [on]: {
        on,
        low: { on, line: 5, value: celsius(low) },
        high: null,
        rain: null,
        wind: null,
        humidity: null,
      },
    },
    settings: Object.fromEntries(Object.entries(settings).map(([what, value]) => [what, set(what, value)])),
  });
};
const watts = (given: Place): number => Number(worth(place(given), 'heat-watts'));
const lamps = (given: Place) => {
  const state = place(given);
  return [worth(state, 'lamps-for-night'), worth(state, 'lamps-rest-on')];
};

describe('the number of lamps says what it rests on', () => {
  test.each([
    [
      'chicks of a week in the cold: the table, as long as they cannot hold their warmth',
      { birds: 100, low: 40 },
      [4, 'table'],
    ],
    ['two weeks on: their own heat counts', { birds: 100, low: 40, age: 15 }, [3, 'balance']],
    ['a dozen: one lamp', { birds: 12, low: 55 }, [1, 'table']],
    ['thirty in mild weather: one would do, and one bulb may fail', { birds: 30, low: 60 }, [2, 'spare']],
    ['as warm around them as under the lamp', { low: 90 }, [0, 'none']],
    [
      'a draughty brooder in a hard frost: more than the table has',
      { birds: 50, low: 0, settings: { 'brooder-draught': true } },
      [5, 'balance'],
    ],
    [
      'lamps of half the watts: twice as many by the table',
      { birds: 50, low: 40, settings: { 'lamp-watts': 125 } },
      [4, 'table'],
    ],
  ])('%s', (_, given, wanted) => {
    expect(lamps(given)).toEqual(wanted);
  });

  test('a kind that nothing is known of goes by the table alone', () => {
    const state = place({ kind: 'jersey', low: 40, age: 20 });
    expect(worth(state, 'lamps-by-balance')).toBeNull();
    expect([worth(state, 'lamps-for-night'), worth(state, 'lamps-rest-on')]).toEqual([2, 'table']);
  });
});

describe('common practice, no source', () => {
  test('about 50 chicks at mornings in the 30s °F have two lamps of 250 watts over a draughty floor', () => {
    const day3 = { birds: 50, age: 3, low: 35, settings: { 'brooder-draught': true } };
    expect(worth(place(day3), 'lamps-by-balance')).toBe(2);
    expect(lamps(day3)).toEqual([2, 'table']);
  });

  test('one lamp is enough in mild weather', () => {
    expect(worth(place({ birds: 50, age: 3, low: 60 }), 'lamps-by-balance')).toBe(1);
  });

  test('fast birds give off much heat themselves: at three weeks they warm the brooder more than slow ones', () => {
    const warming = (kind: string): number => Number(worth(place({ kind, age: 21 }), 'own-warming'));
    expect(warming('fast')).toBeGreaterThan(3);
    expect(warming('fast')).toBeGreaterThan(warming('slow'));
  });
});

test('the floor of a brooder that is shared falls to each group by what it needs', () => {
  const reds = group({ name: 'reds', line: 2, boxed: 50 });
  const floor: Setting = { what: 'brooder', value: 4, on: '2026-05-02', line: 3, size: null, said: '' };
  const state = stateOf({ groups: [group(), reds], settings: { brooder: [floor] } });
  expect(worth(state, 'brooder-share')).toBeCloseTo(2, 10);
  expect(worth(stateOf(), 'brooder-share')).toBeCloseTo(25 * squareFeet, 10);
});

describe('it leans the right way', () => {
  const places = fc.record({
    birds: fc.integer({ min: 1, max: 200 }),
    age: fc.integer({ min: 0, max: 34 }),
    low: fc.integer({ min: -10, max: 70 }),
  });

  test('colder surroundings or a draught never want fewer watts', () => {
    fc.assert(
      fc.property(places, fc.integer({ min: 0, max: 30 }), (given, colder) => {
        const now = watts(given);
        expect(watts({ ...given, low: given.low - colder })).toBeGreaterThanOrEqual(now - 1e-9);
        // A draught takes the chicks' own warmth too.
        expect(watts({ ...given, settings: { 'brooder-draught': true } })).toBeGreaterThanOrEqual(now - 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  test('more birds on a floor of their own never want fewer watts', () => {
    fc.assert(
      fc.property(places, fc.integer({ min: 0, max: 100 }), (given, more) => {
        expect(watts({ ...given, birds: given.birds + more })).toBeGreaterThanOrEqual(watts(given) - 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  test('lamps are whole, never fewer than one where any heat is wanted', () => {
    fc.assert(
      fc.property(places, (given) => {
        const [count, rests] = lamps(given);
        expect(Number.isInteger(count)).toBe(true);
        expect(Number(count) >= 1 || rests === 'none').toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});
