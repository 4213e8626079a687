import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Setting, Sign, State, WeatherDay } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const fahrenheit = (base: unknown): number => Math.round(Number(base) * 18 + 320) / 10;

const night = (on: string, low: number): Record<string, WeatherDay> => ({
  [on]: { on, low: { on, line: 5, value: celsius(low) }, high: null, rain: null, wind: null, humidity: null },
});
const sign = (name: string, on: string, given: Partial<Sign> = {}): Sign => ({
  sign: name,
  on,
  line: 9,
  count: null,
  group: 'whites',
  words: name,
  ...given,
});
const set = (what: string, value: number, on = '2026-05-02'): State['settings'] => {
  const setting: Setting = { what, value, on, line: 3, size: null, said: String(value) };
  return { [what]: [setting] };
};
const assumedIn = (state: State, fact: string, on = state.on): readonly string[] =>
  workOut(state, on)
    .step(fact, 'whites')
    .assumed.map((each) => each.id);

describe('the warm spot', () => {
  test.each([
    [0, 95],
    [6, 95],
    [7, 90],
    [13, 90],
    [14, 85],
    [21, 80],
    [28, 75],
    [35, 70],
    [154, 70],
  ])('on day %i it is %i °F', (age, target) => {
    const state = stateOf({ on: addDays('2026-05-01', age) });
    expect(fahrenheit(worth(state, 'brooder-target'))).toBe(target);
  });

  test.each([
    [3, 92, 95],
    [10, 85, 90],
    [24, 80, 85],
    // The two tables part in the fifth week: the target is below the second table's low end.
    [30, 75, 85],
    [40, 70, 80],
  ])('on day %i %i to %i °F is allowed', (age, low, high) => {
    const state = stateOf({ on: addDays('2026-05-01', age) });
    const facts = ['brooder-target-low', 'brooder-target-high'].map((fact) => fahrenheit(worth(state, fact)));
    expect(facts).toEqual([low, high]);
  });

  test('is not known before the hatch', () => {
    expect(worth(stateOf({ on: '2026-04-30' }), 'brooder-target')).toBeNull();
  });

  test('comes down a step once a week, until there is none left', () => {
    expect(worth(stateOf({ on: '2026-05-01' }), 'heat-down-on')).toBe('2026-05-08');
    expect(worth(stateOf({ on: '2026-05-08' }), 'heat-down-on')).toBe('2026-05-15');
    expect(worth(stateOf({ on: '2026-06-05' }), 'heat-down-on')).toBeNull();
  });
});

describe('the surroundings', () => {
  test("are tonight's low, and say so", () => {
    const state = stateOf({ weather: night('2026-05-08', 41) });
    expect(fahrenheit(worth(state, 'surroundings'))).toBe(41);
    expect(assumedIn(state, 'surroundings')).toEqual(['brooder-as-cold-as-outside']);
  });

  test('are the room where its temperature is set, whatever the night', () => {
    const state = stateOf({
      weather: night('2026-05-08', 41),
      settings: set('room-temperature', celsius(60), '2026-05-08'),
    });
    expect(fahrenheit(worth(state, 'surroundings'))).toBe(60);
    expect(assumedIn(state, 'surroundings')).toEqual([]);
  });

  test('of a room that was set on an earlier day are taken to be the same', () => {
    expect(assumedIn(stateOf({ settings: set('room-temperature', 15) }), 'surroundings')).toEqual([
      'room-as-set',
    ]);
  });

  test('are not what the thermometer under the lamp reads, which counts for two days', () => {
    const state = stateOf({ settings: set('brooder-temperature', 31, '2026-05-07') });
    const later = { ...state, on: '2026-05-09' };
    expect([
      worth(state, 'surroundings'),
      worth(state, 'brooder-reading'),
      worth(later, 'brooder-reading'),
    ]).toEqual([null, 31, null]);
  });

  test('are asked for when no night is on record', () => {
    const { value, missing } = workOut(stateOf({ weather: night('2026-05-07', 41) })).step(
      'surroundings',
      'whites',
    );
    expect({ value, missing }).toEqual({ value: null, missing: [{ fact: 'surroundings', group: null }] });
  });
});

describe('lamps', () => {
  test.each([
    [50, 40, 2],
    [51, 40, 3],
    [100, 49.9, 4],
    [100, 50, 2],
    [25, 60, 1],
    // One for the heat, one that may fail.
    [26, 60, 2],
    [1, 20, 1],
    [50, 89, 2],
    [50, 90, 0],
  ])('for %i chicks of a week in surroundings of %d °F: %i', (boxed, low, lamps) => {
    const state = stateOf({ groups: [group({ boxed })], weather: night('2026-05-08', low) });
    expect(worth(state, 'lamps-needed')).toBe(lamps);
  });

  test('are none with the heat off or out on grass, whatever the night', () => {
    const out = group({ whereabouts: [{ on: '2026-05-08', line: 4, place: 'pen', daysOnly: false }] });
    expect(worth(stateOf({ signs: [sign('heat-off', '2026-05-08')] }), 'lamps-needed')).toBe(0);
    expect(worth(stateOf({ groups: [out] }), 'lamps-needed')).toBe(0);
  });

  test('are asked for when the night is not known', () => {
    expect(worth(stateOf(), 'lamps-needed')).toBeNull();
  });
});

describe('what was seen of the chicks', () => {
  test('the last thing seen counts, today and yesterday', () => {
    const signs = [sign('piled', '2026-05-07'), sign('even', '2026-05-07', { line: 10 })];
    expect(worth(stateOf({ signs }), 'behaviour')).toBe('even');
    expect(worth(stateOf({ signs, on: '2026-05-09' }), 'behaviour')).toBeNull();
  });

  test('what was seen of another group does not count, what was seen of all does', () => {
    expect(
      worth(stateOf({ signs: [sign('piled', '2026-05-08', { group: 'reds' })] }), 'behaviour'),
    ).toBeNull();
    expect(worth(stateOf({ signs: [sign('piled', '2026-05-08', { group: null })] }), 'behaviour')).toBe(
      'piled',
    );
  });

  test('only how they lie counts, not what else they do', () => {
    const signs = [sign('piled', '2026-05-08'), sign('pecking', '2026-05-08', { line: 10 })];
    expect(worth(stateOf({ signs }), 'behaviour')).toBe('piled');
  });

  test('the heat is off until it is on again', () => {
    const off = sign('heat-off', '2026-05-06');
    expect(worth(stateOf(), 'heat-is-off')).toBe(false);
    expect(worth(stateOf({ signs: [off] }), 'heat-is-off')).toBe(true);
    expect(worth(stateOf({ signs: [off, sign('heat-on', '2026-05-07')] }), 'heat-is-off')).toBe(false);
  });
});

describe('without heat', () => {
  test('in down they need as much as in the warm spot, feathered what they stand outside', () => {
    const on = '2026-05-17';
    const floors = [[], [sign('feathered', on)]].map((signs) =>
      fahrenheit(worth(stateOf({ on, signs }), 'heatless-floor')),
    );
    expect(floors).toEqual([85, 65]);
  });

  test('feathers seen in the first two weeks change nothing', () => {
    const state = stateOf({ on: '2026-05-14', signs: [sign('feathered', '2026-05-14')] });
    expect(fahrenheit(worth(state, 'heatless-floor'))).toBe(90);
  });

  test.each([
    // Feathers by three weeks, and 50 °F is enough then.
    [55, '2026-05-22'],
    [50, '2026-05-22'],
    // 40 °F at four weeks, 32 °F at five.
    [45, '2026-05-29'],
    [33, '2026-06-05'],
    // A room as warm as the warm spot of the third week.
    [86, '2026-05-15'],
  ])('surroundings of %i °F let the heat come off on %s', (low, date) => {
    const state = stateOf({ weather: night('2026-05-08', low) });
    expect(worth(state, 'heat-off-on')).toBe(date);
    expect(assumedIn(state, 'heat-off-on')).toEqual(['nights-as-tonight']);
  });

  test('a night below the last of the table gives no day', () => {
    expect(worth(stateOf({ weather: night('2026-05-08', 20) }), 'heat-off-on')).toBeNull();
  });

  test('old birds whose heat is still on may lose it at once', () => {
    const state = stateOf({ on: '2026-07-01', weather: night('2026-07-01', 50) });
    expect(worth(state, 'heat-off-on')).toBe('2026-07-01');
    expect(assumedIn(state, 'heat-off-on')).toEqual([]);
  });

  test('with the heat off it is the day that it went off', () => {
    const state = stateOf({ weather: night('2026-05-08', 60), signs: [sign('heat-off', '2026-05-06')] });
    expect(worth(state, 'heat-off-on')).toBe('2026-05-06');
  });
});

describe('floor', () => {
  test('of all groups in the brooder is added up', () => {
    const reds = group({ name: 'reds', line: 2, boxed: 20, hatched: '2026-04-16', arrived: '2026-04-17' });
    const out = group({
      name: 'blacks',
      line: 3,
      whereabouts: [{ on: '2026-05-03', line: 4, place: 'pen', daysOnly: false }],
    });
    const state = stateOf({ groups: [group(), reds, out], settings: set('brooder', 2.5) });
    // 50 of a week at ½ ft² and 20 of three weeks at ¾ ft².
    expect(Number(worth(state, 'floor-needed-in-all', state.on, null)) / 0.09290304).toBeCloseTo(40, 10);
    expect(worth(state, 'brooder-floor', state.on, null)).toBe(2.5);
  });
});
