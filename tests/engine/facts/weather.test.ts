/** How bad a day or a night is for birds where they live, and when it turns. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { levels } from '../../../engine/facts/weather/level.ts';
import type { Group, Setting, Sign, State } from '../../../engine/types.ts';
import { toBase } from '../../../engine/units.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { type Told, weatherOf } from '../../helpers/weather-of.ts';
import { bookForTests, workOut, worth } from '../../helpers/work-out.ts';

const hatched = '2026-05-01';
/** Six weeks old: a plan weight of about 4.5 lb, and feathered. */
const on = '2026-06-12';
const out = { on: '2026-05-25', line: 2, place: 'pen', daysOnly: false } as const;
const inPen = (told: Told, given: Partial<State> = {}, of: Partial<Group> = {}): State =>
  stateOf({
    on,
    groups: [group({ hatched, whereabouts: [out], ...of })],
    weather: weatherOf({ [on]: told }),
    ...given,
  });
const celsius = (fahrenheit: number): number => toBase(bookForTests.units, { value: fahrenheit, unit: 'F' });
const rank = (level: unknown): number => levels.map(String).indexOf(String(level));
const sign = (name: string, day = on): Sign => ({
  on: day,
  line: 9,
  sign: name,
  count: null,
  group: null,
  words: '',
});
const setting = (what: string, value: number): Record<string, readonly Setting[]> => ({
  [what]: [{ on, line: 8, what, value, size: null, said: '' }],
});
const assumedIn = (state: State, fact: string): readonly string[] =>
  workOut(state)
    .step(fact, 'whites')
    .assumed.map((each) => each.id);

describe('heat on grass', () => {
  test.each([
    [20, 'calm'],
    [26.5, 'watch'],
    [29.5, 'act'],
    [33, 'danger'],
  ])('at %d °C and 60 %% is %s for birds of less than 7 lb', (high, level) => {
    expect(worth(inPen({ high, humidity: 0.6 }), 'heat-level')).toBe(level);
  });

  test('is worse for heavy birds: each level begins 3 to 4 °C lower from 7 lb on', () => {
    const heavy = { on, line: 3, mean: 3.4, count: 40, spread: null };
    const levelsAt = (high: number) =>
      [[], [heavy]].map((weighings) =>
        worth(inPen({ high, humidity: 0.6 }, {}, { weighings }), 'heat-level'),
      );
    expect(levelsAt(24)).toEqual(['calm', 'watch']);
    expect(levelsAt(27)).toEqual(['watch', 'act']);
    expect(levelsAt(30.5)).toEqual(['act', 'danger']);
  });

  test('goes by the thermometer where the humidity is not known, and says so', () => {
    expect(worth(inPen({ high: celsius(79) }), 'heat-level')).toBe('calm');
    expect(worth(inPen({ high: celsius(80) }), 'heat-level')).toBe('watch');
    expect(worth(inPen({ high: celsius(85) }), 'heat-level')).toBe('act');
    expect(assumedIn(inPen({ high: celsius(85) }), 'heat-level')).toEqual(['driest-air']);
  });

  test('is a danger without the humidity as soon as the driest air would be one', () => {
    expect(worth(inPen({ high: celsius(93) }), 'heat-level')).toBe('act');
    expect(worth(inPen({ high: celsius(96) }), 'heat-level')).toBe('danger');
  });

  test('says nothing of the humidity on a day on which it cannot matter', () => {
    expect(assumedIn(inPen({ high: 20 }), 'heat-level')).toEqual([]);
  });

  test('is made worse by still air and no better by wind, which a pen breaks', () => {
    const index = (wind?: number) =>
      Number(
        worth(inPen({ high: 30, humidity: 0.5, ...(wind === undefined ? {} : { wind }) }), 'heat-index'),
      );
    expect(index(0)).toBeCloseTo(index() * 0.2 ** -0.058, 10);
    expect(index(0.5)).toBeGreaterThan(index());
    expect(index(8)).toBe(index());
  });

  test('takes birds whose weight is not known as heavy, aloud', () => {
    const state = inPen({ high: 24, humidity: 0.6 }, {}, { kind: 'unheard-of' });
    expect(worth(state, 'heat-level')).toBe('watch');
    expect(assumedIn(state, 'weight-for-heat')).toEqual(['weighed-as-heavy']);
  });

  test('is known beyond the air that the wet-bulb formula holds for', () => {
    expect(worth(inPen({ high: 52, humidity: 0.02 }), 'heat-level')).toBe('danger');
    expect(assumedIn(inPen({ high: 52, humidity: 0.02 }), 'wet-bulb')).toEqual([
      'humidity-of-the-hot-hours',
      'wet-bulb-at-its-end',
    ]);
    expect(worth(inPen({ high: -30 }), 'heat-level')).toBe('calm');
  });

  test('is asked for when no high is on record', () => {
    expect(workOut(inPen({ low: 10 })).step('heat-level', 'whites').missing).toEqual([
      { fact: 'today-high', group: null },
    ]);
  });

  test('is never calmer in hotter or damper air', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 150, max: 500 }),
        fc.integer({ min: 5, max: 98 }),
        fc.boolean(),
        (tenths, percent, isKnown) => {
          const level = (high: number, humidity: number) =>
            rank(worth(inPen(isKnown ? { high, humidity } : { high }), 'heat-level'));
          const [high, humidity] = [tenths / 10, percent / 100];
          expect(level(high + 0.5, humidity)).toBeGreaterThanOrEqual(level(high, humidity));
          expect(level(high, humidity + 0.01)).toBeGreaterThanOrEqual(level(high, humidity));
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('heat in the brooder', () => {
  const chicks = (high: number, at = '2026-05-06') =>
    stateOf({ on: at, groups: [group({ hatched })], weather: weatherOf({ [at]: { high } }) });

  test('goes by the warm spot while they are in down: 95 °F is what they want', () => {
    expect(worth(chicks(celsius(95)), 'heat-level')).toBe('calm');
    expect(worth(chicks(celsius(97)), 'heat-level')).toBe('act');
    expect(worth(chicks(celsius(105)), 'heat-level')).toBe('danger');
  });

  test('goes by the index once they have feathers', () => {
    expect(worth(chicks(celsius(81), '2026-05-28'), 'heat-level')).toBe('watch');
  });
});

describe('cold on grass, at six weeks', () => {
  test.each([
    [46, 'calm'],
    [44, 'watch'],
    [31, 'act'],
    [21, 'danger'],
  ])('a dry night of %d °F is %s', (low, level) => {
    expect(worth(inPen({ low: celsius(low) }), 'cold-level')).toBe(level);
  });

  test('wind or rain raises what they can stand by 10 °F', () => {
    const floor = (told: Told) => Number(worth(inPen({ low: 10, ...told }), 'chill-floor')) * 1.8 + 32;
    expect(floor({})).toBeCloseTo(32, 9);
    expect(floor({ wind: 8 })).toBeCloseTo(42, 9);
    expect(floor({ rain: 5 })).toBeCloseTo(42, 9);
  });

  test('rain is one to act on below 60 °F, and one to watch above it', () => {
    expect(worth(inPen({ low: celsius(58), rain: 5 }), 'cold-level')).toBe('act');
    expect(worth(inPen({ low: celsius(62), rain: 5 }), 'cold-level')).toBe('watch');
    expect(worth(inPen({ low: celsius(62), rain: 1 }), 'cold-level')).toBe('calm');
  });

  test('rain and wind together are a danger below what they can stand', () => {
    expect(worth(inPen({ low: celsius(40), rain: 5 }), 'cold-level')).toBe('act');
    expect(worth(inPen({ low: celsius(40), rain: 5, wind: 9 }), 'cold-level')).toBe('danger');
  });

  test('a high can raise an alarm where no low is known, and never call one off', () => {
    expect(worth(inPen({ high: celsius(20) }), 'cold-level')).toBe('danger');
    expect(worth(inPen({ high: celsius(70) }), 'cold-level')).toBeNull();
  });

  test('is never calmer in a colder, wetter or windier night', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -25, max: 25 }),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 0, max: 20 }),
        (low, rain, wind) => {
          const level = (told: Told) => rank(worth(inPen(told), 'cold-level'));
          const here = level({ low, rain, wind });
          expect(level({ low: low - 1, rain, wind })).toBeGreaterThanOrEqual(here);
          expect(level({ low, rain: rain + 1, wind })).toBeGreaterThanOrEqual(here);
          expect(level({ low, rain, wind: wind + 1 })).toBeGreaterThanOrEqual(here);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('cold in the brooder', () => {
  const chicks = (low: number, given: Partial<State> = {}) =>
    stateOf({
      on: '2026-05-26',
      groups: [group({ hatched })],
      weather: weatherOf({ '2026-05-26': { low } }),
      ...given,
    });

  test('is one to watch with the heat on, and one to act on or a danger without', () => {
    expect(worth(chicks(celsius(40)), 'cold-level')).toBe('watch');
    const off = { signs: [sign('heat-off', '2026-05-20')] };
    expect(worth(chicks(celsius(55), off), 'cold-level')).toBe('calm');
    expect(worth(chicks(celsius(45), off), 'cold-level')).toBe('act');
    expect(worth(chicks(celsius(30), off), 'cold-level')).toBe('danger');
  });

  test('goes by the room where one is set', () => {
    expect(worth(chicks(celsius(20), { settings: setting('room-temperature', 15) }), 'cold-level')).toBe(
      'calm',
    );
  });
});

test('wet birds count today and tomorrow', () => {
  expect(worth(inPen({}, { signs: [sign('wet-birds', '2026-06-11')] }), 'birds-wet')).toBe(true);
  expect(worth(inPen({}, { signs: [sign('wet-birds', '2026-06-10')] }), 'birds-wet')).toBe(false);
});

describe('when it turns', () => {
  const turn = (days: Readonly<Record<string, Told>>) => {
    const state = inPen({}, { weather: weatherOf(days) });
    return ['care-level', 'care-turns-on', 'care-turns-to'].map((fact) => worth(state, fact));
  };

  test('is the first day on record to come that is otherwise', () => {
    expect(
      turn({
        [on]: { high: 24, low: 12 },
        '2026-06-13': { high: 25, low: 13 },
        '2026-06-14': { high: 31, low: 16 },
      }),
    ).toEqual(['calm', '2026-06-14', 'act']);
  });

  test('is not looked for past a gap in the record', () => {
    expect(turn({ [on]: { high: 24, low: 12 }, '2026-06-14': { high: 31, low: 16 } })).toEqual([
      'calm',
      null,
      null,
    ]);
  });

  test('is not named by a day of which less is known', () => {
    expect(turn({ [on]: { high: 36, low: 12 }, '2026-06-13': { low: 13 } })).toEqual(['danger', null, null]);
    expect(turn({ [on]: { low: 12 }, '2026-06-13': { low: -2 } })).toEqual(['calm', '2026-06-13', 'act']);
  });
});

test('hours stand by themselves and with their day', () => {
  expect(worth(inPen({}), 'shade-hour')).toBe('11:00');
  expect(worth(inPen({}), 'shade-time')).toBe('2026-06-12T11:00');
});

describe('what the question says of the sky', () => {
  const said = (fact: string, of: string) =>
    workOut(inPen({ rain: 1, wind: 2 }), on, [{ what: { fact }, value: 'yes', adds: false }]).step(of, null);

  test('counts for more than the record, aloud', () => {
    expect(said('rain-said', 'rain-today')).toMatchObject({ value: 10, assumed: [{ id: 'rain-as-said' }] });
    expect(said('wind-said', 'wind-today').assumed).toMatchObject([{ id: 'wind-as-said' }]);
    expect(said('wind-said', 'wind-today').value).toBeCloseTo(8.94, 2);
    expect(said('rain-said', 'wind-today')).toMatchObject({ value: 2, assumed: [] });
  });
});
