import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Group, Purchase, State, Weighing } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const hatched = '2026-05-01';
const pound = 0.45359237;
const wanting = (carcass: number): State['settings'] => ({
  'wanted-carcass': [{ what: 'wanted-carcass', value: carcass, on: hatched, line: 2, size: null, said: '' }],
});
const onDay = (age: number, given: Partial<Group> = {}, more: Partial<State> = {}): State =>
  stateOf({ on: addDays(hatched, age), groups: [group(given)], ...more });
const weighing = (age: number, mean: number, count = 10): Weighing => ({
  on: addDays(hatched, age),
  line: 50 + age,
  mean,
  count,
  spread: null,
});

describe('the day they are ready', () => {
  test('is the first on which the carcass is heavy enough', () => {
    const kinds = fc.constantFrom('fast', 'medium', 'slow');
    fc.assert(
      fc.property(
        kinds,
        fc.double({ min: 0.5, max: 2.2, noNaN: true }),
        fc.integer({ min: 0, max: 154 }),
        (kind, wanted, age) => {
          const state = onDay(age, { kind }, { settings: wanting(wanted) });
          const ready = String(worth(state, 'ready-on'));
          expect(Number(worth(state, 'carcass-weight', ready))).toBeGreaterThanOrEqual(wanted);
          expect(Number(worth(state, 'carcass-weight', addDays(ready, -1)))).toBeLessThan(wanted);
        },
      ),
    );
  });

  test('lies in its range, which weighing narrows', () => {
    const range = (state: State) =>
      ['ready-early', 'ready-on', 'ready-late'].map((fact) => String(worth(state, fact)));
    expect(range(onDay(42))).toEqual(['2026-06-12', '2026-06-24', '2026-07-22']);
    expect(range(onDay(42, { weighings: [weighing(42, 2.05)] }))).toEqual([
      '2026-06-20',
      '2026-06-24',
      '2026-07-02',
    ]);
  });

  test('does not move as the days go by without news', () => {
    const weighings = [weighing(42, 1.9)];
    const facts = ['ready-early', 'ready-on', 'ready-late'];
    const from = (age: number) => facts.map((fact) => worth(onDay(age, { weighings }), fact));
    expect(from(50)).toEqual(from(42));
  });

  test('comes later for heavier carcasses and lighter flocks', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.7, max: 1.2, noNaN: true }),
        fc.double({ min: 0.5, max: 1.5, noNaN: true }),
        (share, wanted) => {
          const ready = (mean: number, carcass: number) =>
            String(
              worth(
                onDay(42, { weighings: [weighing(42, mean)] }, { settings: wanting(carcass) }),
                'ready-on',
              ),
            );
          expect(ready(2.05 * share, wanted) >= ready(2.05 * share * 1.05, wanted)).toBe(true);
          expect(ready(2.05 * share, wanted) <= ready(2.05 * share, wanted * 1.05)).toBe(true);
        },
      ),
    );
  });

  test('is none when they never come to it, and then neither are its early and late ends', () => {
    const workings = workOut(onDay(60, { kind: 'slow' }, { settings: wanting(4) }));
    const facts = ['ready-on', 'reaches-weight', 'ready-early', 'ready-late', 'days-to-ready'];
    expect(facts.map((fact) => workings.step(fact, 'whites').value)).toEqual([null, false, null, null, null]);
  });

  test('has for its late end no day on which such birds are held no more', () => {
    const late = (mean: number) => worth(onDay(49, { weighings: [weighing(49, mean)] }), 'ready-late');
    expect(late(1.9)).toBe(addDays(hatched, 84));
    // So slow that they are ready only after that day: then the late end is that day itself.
    const state = onDay(49, { weighings: [weighing(49, 1.7)] });
    expect(Number(worth(state, 'days-to-ready'))).toBeGreaterThan(84 - 49);
    expect(worth(state, 'ready-late')).toBe(worth(state, 'ready-on'));
  });

  test('has the end of the growth line as its late end when the low end never comes to it', () => {
    expect(worth(onDay(30, { kind: 'slow' }, { settings: wanting(2.1) }), 'ready-late')).toBe(
      addDays(hatched, 154),
    );
  });
});

describe('the wanted carcass', () => {
  test('is what was set, with its entry', () => {
    expect(workOut(onDay(40, {}, { settings: wanting(2) })).step('wanted-carcass', null)).toMatchObject({
      value: 2,
      entries: [{ on: hatched, line: 2 }],
      assumed: [],
    });
  });

  test('is the usual one otherwise, aloud', () => {
    const step = workOut(onDay(40)).step('wanted-carcass', null);
    expect(step.value).toBeCloseTo(4.5 * pound, 9);
    expect(step.assumed).toEqual([
      { id: 'usual-carcass', group: null, values: { weight: { value: step.value, unit: 'kg' } } },
    ]);
  });
});

describe('the usual time', () => {
  test.each([
    ['fast', 42, 56],
    ['medium', 56, 84],
    ['slow', 77, 119],
  ])('of %s birds is from %i to %i days', (kind, from, to) => {
    const state = onDay(30, { kind });
    expect(worth(state, 'window-opens')).toBe(addDays(hatched, from));
    expect(worth(state, 'window-closes')).toBe(addDays(hatched, to));
  });
});

describe('another week', () => {
  const bought: Purchase = {
    on: hatched,
    line: 9,
    what: 'feed',
    ration: null,
    mass: 50 * pound,
    bags: 1,
    count: null,
    price: '20.00',
    group: null,
  };

  test('costs its feed over the carcass it adds', () => {
    const workings = workOut(onDay(49, {}, { purchases: [bought] }));
    const [cost, feed, price, gain] = [
      'next-weight-cost',
      'feed-next-week',
      'feed-price',
      'next-week-gain',
    ].map((fact) => Number(workings.step(fact, 'whites').value));
    // 0.525 kg published gain from week 7 to 8, 0.82 of it planned for, 72 % dressed.
    expect(gain).toBeCloseTo(0.525 * 0.82 * 0.72, 6);
    expect(price).toBeCloseTo(20 / (50 * pound), 9);
    expect(cost).toBeCloseTo((Number(feed) * Number(price)) / Number(gain), 9);
  });

  test('has no price while no feed has one', () => {
    expect(worth(onDay(49), 'next-weight-cost')).toBeNull();
  });

  test('has no cost by weight when it adds none', () => {
    const workings = workOut(onDay(200, {}, { purchases: [bought] }));
    expect(workings.step('next-week-gain', 'whites').value).toBe(0);
    expect(workings.step('next-weight-cost', 'whites').value).toBeNull();
  });
});
