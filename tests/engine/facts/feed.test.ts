import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type Day } from '../../../engine/day.ts';
import type { Feeding, Group, Noted, State, WeatherDay } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth, worthUntil } from '../../helpers/work-out.ts';

const hatched = '2026-05-01';
const on = addDays(hatched, 35);
const here: Partial<Group> = { arrived: hatched };

const feedings = (from: Day, masses: readonly number[], to: string | null = 'whites'): Feeding[] =>
  masses.map((mass, index) => ({ on: addDays(from, index), line: 10 + index, mass, group: to }));

const flock = (given: Partial<State> = {}, of: Partial<Group> = {}): State =>
  stateOf({ on, groups: [group({ ...here, ...of })], ...given });

const cold = (day: Day, low: number, high: number | null): Record<Day, WeatherDay> => {
  const noted = (value: number): Noted => ({ on: day, line: 5, value });
  const air = { low: noted(low), high: high === null ? null : noted(high) };
  return { [day]: { on: day, ...air, rain: null, wind: null, humidity: null } };
};
const inPen: Partial<Group> = {
  whereabouts: [{ on: addDays(hatched, 21), line: 3, place: 'pen', daysOnly: false }],
};

describe('feed of a day', () => {
  test('is the bird by the table times the birds alive', () => {
    const state = flock();
    expect(worth(state, 'feed-table-day')).toBe(worth(state, 'feed-per-bird-day'));
    expect(worth(state, 'feed-today')).toBeCloseTo(50 * Number(worth(state, 'feed-per-bird-day')), 12);
    expect(worth(state, 'feed-over-span')).toBeCloseTo(Number(worth(state, 'feed-today')), 12);
    expect(worth(state, 'feed-table-day')).toBeCloseTo(0.9 * Number(worth(state, 'feed-published-day')), 12);
  });

  test('asks nothing of a chick on its first day and still feeds a bird kept for 154 days', () => {
    const kinds = ['fast', 'medium', 'slow'];
    for (const kind of kinds) {
      const byAge = [0, 154].map((age) =>
        Number(worth(flock({ on: addDays(hatched, age) }, { kind }), 'feed-table-day')),
      );
      expect(byAge[0]).toBeGreaterThan(0.005);
      expect(byAge[0]).toBeLessThan(0.02);
      expect(byAge[1]).toBeGreaterThan(0.08);
      expect(byAge[1]).toBeLessThan(0.2);
    }
  });

  test('has no step where the table ends', () => {
    for (const [kind, end] of [
      ['fast', 56],
      ['medium', 84],
      ['slow', 84],
    ] as const) {
      const [before, after] = [end - 1, end].map((age) =>
        Number(worth(flock({ on: addDays(hatched, age) }, { kind }), 'feed-table-day')),
      );
      expect(Math.abs((after ?? 0) / (before ?? 1) - 1)).toBeLessThan(0.04);
    }
  });

  test('is not known for a kind that nobody described', () => {
    const step = workOut(flock({}, { kind: 'speckled' })).step('feed-today', 'whites');
    expect(step.value).toBeNull();
    expect(step.missing).toEqual([{ fact: 'growth-line', group: 'whites' }]);
  });

  test('goes with growth to the power 0.53: birds a third lighter eat a fifth less', () => {
    const ratio = { what: { fact: 'flock-ratio' }, value: 2 / 3, adds: false };
    const [plan, light] = [[], [ratio]].map((supposing) =>
      Number(workOut(flock(), on, supposing).step('feed-table-day', 'whites').value),
    );
    expect((light ?? 0) / (plan ?? 1)).toBeCloseTo((2 / 3) ** 0.53, 10);
  });
});

describe('cold', () => {
  // 10 °C is 50 °F: five degrees below 55, one per cent each.
  test('adds feed for birds outside by the mean of low and high', () => {
    const state = flock({ weather: cold(on, 5, 15) }, inPen);
    expect(worth(state, 'feed-cold-extra')).toBeCloseTo(0.05, 10);
    expect(worth(state, 'feed-per-bird-day')).toBeCloseTo(1.05 * Number(worth(state, 'feed-table-day')), 12);
  });

  test('is judged by the low alone where no high is on record', () => {
    expect(worth(flock({ weather: cold(on, 10, null) }, inPen), 'feed-cold-extra')).toBeCloseTo(0.05, 10);
  });

  test('adds nothing in the brooder', () => {
    expect(worth(flock({ weather: cold(on, -5, null) }), 'feed-cold-extra')).toBe(0);
  });

  test('is spread over the days asked about, and the days without a low are named', () => {
    const state = flock({ weather: cold(on, 10, null) }, inPen);
    expect(worthUntil(state, 'feed-cold-extra', addDays(on, 4))).toBeCloseTo(0.01, 10);
    const { assumed } = workOut(flock({}, inPen)).step('feed-over-span', 'whites');
    expect(assumed).toEqual([
      { id: 'no-cold-on-record', group: 'whites', values: { days: { value: 1, unit: 'day' } } },
    ]);
  });
});

describe('a span', () => {
  test('adds up its days, both ends counted', () => {
    const state = flock();
    const days = [0, 1, 2].map((ahead) =>
      Number(worth(flock({ on: addDays(on, ahead) }), 'feed-per-bird-day')),
    );
    expect(worthUntil(state, 'span-days', addDays(on, 2))).toBe(3);
    expect(worthUntil(state, 'feed-per-bird', addDays(on, 2))).toBeCloseTo(
      days.reduce((sum, each) => sum + each, 0),
      10,
    );
  });

  test('counts the losses that are usual at their age', () => {
    const state = flock();
    const whole = 50 * Number(worthUntil(state, 'feed-per-bird', addDays(on, 20)));
    const counted = Number(worthUntil(state, 'feed-over-span', addDays(on, 20)));
    expect(counted).toBeLessThan(whole);
    expect(counted).toBeGreaterThan(0.97 * whole);
  });

  test('is nothing when it ends before it begins', () => {
    expect(worthUntil(flock(), 'feed-over-span', addDays(on, -1))).toBe(0);
  });

  test('is parted by ration without remainder', () => {
    const state = flock({ on: addDays(hatched, 10) });
    const until = addDays(hatched, 55);
    const parts = ['starter', 'grower', 'finisher'].map((ration) =>
      Number(worthUntil(state, `${ration}-over-span`, until)),
    );
    expect(Math.min(...parts)).toBeGreaterThan(0);
    expect(parts.reduce((sum, each) => sum + each, 0)).toBeCloseTo(
      Number(worthUntil(state, 'feed-over-span', until)),
      10,
    );
  });

  test('of the coming week is that of seven days', () => {
    expect(worth(flock(), 'feed-next-week')).toBeCloseTo(
      Number(worthUntil(flock(), 'feed-per-bird', addDays(on, 6))),
      12,
    );
  });

  test('never wants less for more birds or for a longer time', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('fast', 'medium', 'slow'),
        fc.integer({ min: 0, max: 150 }),
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 0, max: 40 }),
        (kind, age, boxed, days) => {
          const feed = (birds: number, span: number): number =>
            Number(
              worthUntil(
                flock({ on: addDays(hatched, age) }, { kind, boxed: birds }),
                'feed-over-span',
                addDays(hatched, age + span),
              ),
            );
          expect(feed(boxed + 1, days)).toBeGreaterThan(feed(boxed, days));
          expect(feed(boxed, days + 1)).toBeGreaterThan(feed(boxed, days));
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('own feed records', () => {
  const first = addDays(on, -10);
  const expected = Array.from({ length: 10 }, (_, index) =>
    Number(worth(flock({ on: addDays(first, index) }), 'feed-today')),
  );

  test('of ten days a fifth above the table pull it two thirds of the way', () => {
    const state = flock({
      feedings: feedings(
        first,
        expected.map((each) => each * 1.2),
      ),
    });
    expect(worth(state, 'feed-records')).toBe('used');
    expect(worth(state, 'feed-recorded-ratio')).toBeCloseTo(1.2, 10);
    expect(worth(state, 'feed-ratio')).toBeCloseTo(1 + (0.2 * 10) / 15, 10);
    expect(worth(state, 'feed-per-bird-day')).toBeCloseTo(
      Number(worth(state, 'feed-table-day')) * (1 + 2 / 15),
      10,
    );
  });

  test('count the same when the feed was given to all and there is one group', () => {
    const own = flock({ feedings: feedings(first, expected) });
    const toAll = flock({ feedings: feedings(first, expected, null) });
    expect(worth(toAll, 'feed-ratio')).toBeCloseTo(Number(worth(own, 'feed-ratio')), 12);
  });

  test('given to all are shared among groups by what each was expected to eat', () => {
    const reds = group({ ...here, name: 'reds', kind: 'slow', line: 2 });
    const groups = [group(here), reds];
    const both = expected.map((each, index) => {
      const day = stateOf({ on: addDays(first, index), groups });
      return each + Number(worth(day, 'feed-today', day.on, 'reds'));
    });
    const state = stateOf({ on, groups, feedings: feedings(first, both, null) });
    expect(worth(state, 'feed-recorded-ratio')).toBeCloseTo(1, 10);
    expect(worth(state, 'feed-recorded-ratio', on, 'reds')).toBeCloseTo(1, 10);
  });

  test.each([
    ['none', []],
    ['few', expected.slice(7)],
    ['doubtful', expected.map((each) => each * 0.3)],
  ] as const)('that are %s leave the table as it is', (records, masses) => {
    const state = flock({ feedings: feedings(addDays(on, -masses.length), masses) });
    expect(worth(state, 'feed-records')).toBe(records);
    expect(worth(state, 'feed-ratio')).toBe(1);
  });

  test('with every second day missing leave the table as it is', () => {
    const given = feedings(first, expected).filter((_, index) => index % 2 === 0);
    const state = flock({ feedings: given });
    expect(worth(state, 'feed-records')).toBe('gaps');
    expect(worth(state, 'feed-days-covered')).toBe(0.5);
    expect(worth(state, 'feed-ratio')).toBe(1);
  });

  test('of today do not count yet', () => {
    const state = flock({ feedings: feedings(on, [1]) });
    expect(worth(state, 'feed-days-recorded')).toBe(0);
  });
});

describe('rations', () => {
  test.each([
    [0, 'starter', 0.23, '2026-05-22'],
    [20, 'starter', 0.23, '2026-05-22'],
    [21, 'grower', 0.2, '2026-06-12'],
    [41, 'grower', 0.2, '2026-06-12'],
    [42, 'finisher', 0.18, null],
  ])('at %i days: %s of %d protein until %s', (age, ration, protein, change) => {
    const state = flock({ on: addDays(hatched, age) });
    expect(worth(state, 'ration')).toBe(ration);
    expect(worth(state, 'protein')).toBeCloseTo(protein, 12);
    expect(worth(state, 'ration-switch')).toBe(change);
  });
});

describe('bags and price', () => {
  const lb = 0.45359237;
  const bought = { on, line: 20, what: 'feed', ration: null, count: null, group: null };
  const set = (what: string, value: number | string, line = 30) => ({
    [what]: [{ on, line, what, value, size: null, said: String(value) }],
  });

  test('a bag holds 50 lb unless something else is on record, and the assumption is said', () => {
    const step = workOut(flock()).step('bag-mass', null);
    expect(step.value).toBeCloseTo(50 * lb, 10);
    expect(step.assumed).toEqual([
      { id: 'usual-bag', group: null, values: { bag: { value: 50 * lb, unit: 'kg' } } },
    ]);
  });

  test('in metric places it holds 25 kg', () => {
    expect(worth(flock({ settings: set('units-system', 'metric') }), 'bag-mass', on, null)).toBe(25);
  });

  test('what was bought last, and above it what was set, outrank the usual bag', () => {
    const purchases = [{ ...bought, bags: 6, mass: 120, price: '117.00' }];
    expect(worth(flock({ purchases }), 'bag-mass', on, null)).toBe(20);
    expect(worth(flock({ purchases, settings: set('bag', 18) }), 'bag-mass', on, null)).toBe(18);
  });

  test('the price is that of the last purchase or of a later setting', () => {
    const purchases = [{ ...bought, bags: 6, mass: 120, price: '117.00' }];
    expect(worth(flock({ purchases }), 'feed-price', on, null)).toBeCloseTo(117 / 120, 12);
    const later = flock({ purchases, settings: set('feed-price', 21) });
    expect(worth(later, 'feed-price', on, null)).toBeCloseTo(21 / 20, 12);
    const earlier = flock({ purchases, settings: set('feed-price', 21, 19) });
    expect(worth(earlier, 'feed-price', on, null)).toBeCloseTo(117 / 120, 12);
  });

  test('without either the price is not known', () => {
    expect(worth(flock(), 'feed-price', on, null)).toBeNull();
  });

  test('chicks and gear are no feed', () => {
    const purchases = [{ ...bought, what: 'chicks', bags: null, mass: null, price: '150.00' }];
    expect(worth(flock({ purchases }), 'feed-price', on, null)).toBeNull();
  });

  test('a begun bag counts whole', () => {
    const state = flock();
    const bags = Number(worth(state, 'feed-today')) / (50 * lb);
    expect(worth(state, 'feed-bags')).toBe(Math.ceil(bags));
  });
});
