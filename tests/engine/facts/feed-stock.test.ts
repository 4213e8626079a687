import { describe, expect, test } from 'vitest';
import { addDays, type Day } from '../../../engine/day.ts';
import type { Feeding, Group, Purchase, State } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth, worthUntil } from '../../helpers/work-out.ts';

const hatched = '2026-05-01';
const on = addDays(hatched, 35);
let line = 100;

const flock = (given: Partial<State> = {}, of: Partial<Group> = {}): State =>
  stateOf({ on, groups: [group({ arrived: hatched, ...of })], ...given });
const fed = (day: Day, mass: number, to: string | null = 'whites'): Feeding => ({
  on: day,
  line: line++,
  mass,
  group: to,
});
const bought = (day: Day, mass: number, price: string | null = null): Purchase => ({
  on: day,
  line: line++,
  what: 'feed',
  ration: null,
  mass,
  bags: null,
  count: null,
  price,
  group: null,
});
const told = (day: Day, value: number) => ({
  'feed-in-stock': [{ on: day, line: line++, what: 'feed-in-stock', value, size: null, said: `${value} kg` }],
});
const need = (day: Day): number => Number(worth(flock({ on: day }), 'feed-today'));
const left = (state: State) => worth(state, 'feed-left', state.on, null);

describe('feed in hand', () => {
  test('is what was told on the day it is told', () => {
    expect(left(flock({ settings: told(on, 50) }))).toBe(50);
  });

  test('is not known when nothing was bought or told, and says what would settle it', () => {
    const step = workOut(flock()).step('feed-left', null);
    expect(step.value).toBeNull();
    expect(step.missing).toEqual([{ fact: 'feed-counted-from', group: null }]);
  });

  test('is what was bought less what was fed, where every day is on record', () => {
    const state = flock({
      purchases: [bought(addDays(on, -3), 100)],
      feedings: [fed(addDays(on, -2), 6), fed(addDays(on, -1), 7), fed(on, 7)],
    });
    expect(left(state)).toBeCloseTo(80, 10);
  });

  test('counts the expected intake on whole days without a record, and says on how many', () => {
    const state = flock({ purchases: [bought(addDays(on, -3), 100)] });
    const days = [need(addDays(on, -2)), need(addDays(on, -1))];
    expect(left(state)).toBeCloseTo(100 - (days[0] ?? 0) - (days[1] ?? 0), 6);
    expect(workOut(state).step('feed-taken', 'whites').assumed).toEqual([
      {
        id: 'days-without-feed-record',
        group: 'whites',
        values: { days: { value: 2, unit: 'day' }, from: { value: addDays(on, -2), unit: 'date' } },
      },
    ]);
  });

  test('does not count a feeder filled for three days three times', () => {
    const first = addDays(on, -3);
    const state = flock({ purchases: [bought(addDays(on, -4), 100)], feedings: [fed(first, 3 * need(on))] });
    expect(left(state)).toBeCloseTo(100 - 3 * need(on), 6);
  });

  test('starts anew from the last word of the keeper; feedings before it on the same day are in it', () => {
    const early = fed(on, 5);
    const settings = told(on, 40);
    const late = fed(on, 6);
    const state = flock({ purchases: [bought(addDays(on, -9), 100)], feedings: [early, late], settings });
    expect(left(state)).toBe(34);
  });

  test('counts only what is on record for a group of a kind that nobody described, and says so', () => {
    const groups = [group({ arrived: hatched, kind: 'speckled' })];
    const settings = told(addDays(on, -2), 40);
    const state = stateOf({ on, groups, settings, feedings: [fed(addDays(on, -1), 5), fed(on, 4, null)] });
    expect(left(state)).toBe(31);
    expect(workOut(state).step('feed-taken', 'whites').assumed).toEqual([
      { id: 'feed-of-unknown-kind', group: 'whites', values: {} },
    ]);
  });

  test('is never below nothing: more fed than bought is said aloud', () => {
    const state = flock({ purchases: [bought(addDays(on, -1), 10)], feedings: [fed(on, 12)] });
    const step = workOut(state).step('feed-left', null);
    expect(step.value).toBe(0);
    expect(step.assumed.map((each) => each.id)).toEqual(['more-fed-than-bought']);
  });
});

describe('how long it lasts', () => {
  test('to the first day that it does not see through', () => {
    const days = [0, 1, 2].map((ahead) => need(addDays(on, ahead)));
    const enough = days.reduce((sum, each) => sum + each, 0);
    const until = (stock: number) => worth(flock({ settings: told(on, stock) }), 'feed-runs-out', on, null);
    expect(until(enough)).toBe(addDays(on, 3));
    expect(until(enough - 0.1)).toBe(addDays(on, 2));
    expect(until(0)).toBe(on);
  });

  test('a day longer once today is fed', () => {
    const state = flock({ settings: told(addDays(on, -1), 2 * need(on)), feedings: [fed(on, need(on))] });
    expect(worth(state, 'feed-runs-out', on, null)).toBe(addDays(on, 1));
    expect(worth(state, 'feed-days-left', on, null)).toBe(1);
  });

  test('less long when they eat more than expected', () => {
    const state = flock({ settings: told(on, 12 * need(on)) });
    const [usual, early] = ['feed-runs-out', 'feed-runs-out-early'].map((fact) =>
      String(worth(state, fact, on, null)),
    );
    expect(String(early) < String(usual)).toBe(true);
  });

  test('is not known when there is nobody to eat it', () => {
    const gone = { processed: [{ on, line: 9, count: 50, dressed: null }] };
    expect(worth(flock({ settings: told(on, 40) }, gone), 'feed-runs-out', on, null)).toBeNull();
    expect(worth(flock({}, gone), 'birds-on-feed', on, null)).toBe(0);
  });
});

describe('what to buy', () => {
  const bag = 50 * 0.45359237;

  test('to a named day: the need of all groups less what is in hand, in whole bags', () => {
    const state = flock({ settings: told(on, 20) });
    const until = addDays(on, 13);
    const wanted = Number(worthUntil(state, 'feed-over-span', until));
    expect(worthUntil(state, 'feed-needed', until, null)).toBeCloseTo(wanted, 8);
    expect(worthUntil(state, 'bags-to-buy', until, null)).toBe(Math.ceil((wanted - 20) / bag));
    expect(worthUntil(state, 'bags-needed', until, null)).toBe(Math.ceil(wanted / bag));
  });

  test('to the end: the day before they are ready', () => {
    const state = flock({ settings: told(on, 0) });
    expect(worth(state, 'feed-wanted-until', on, null)).toBe(addDays(String(worth(state, 'ready-on')), -1));
  });

  test('nothing that would stand longer than it keeps', () => {
    const state = flock({ on: hatched, settings: told(hatched, 0) }, { kind: 'slow' });
    expect(worth(state, 'feed-needed-until', hatched, null)).toBe(addDays(hatched, 60));
    expect(String(worth(state, 'feed-wanted-until', hatched, null)) > addDays(hatched, 60)).toBe(true);
  });

  test('nothing when enough is there', () => {
    expect(worth(flock({ settings: told(on, 5000) }), 'bags-to-buy', on, null)).toBe(0);
  });

  test('costs bags times their price', () => {
    const state = flock({ purchases: [bought(on, bag, '20.00')] });
    const bags = Number(worth(state, 'bags-to-buy', on, null));
    expect(bags).toBeGreaterThan(1);
    expect(worth(state, 'bags-cost', on, null)).toBeCloseTo(bags * 20, 8);
  });

  test('is parted by ration without remainder', () => {
    const state = flock({ settings: told(on, 0) });
    const parts = ['starter', 'grower', 'finisher'].map((ration) =>
      Number(worth(state, `${ration}-needed`, on, null)),
    );
    expect(parts[0]).toBe(0);
    expect(parts.reduce((sum, each) => sum + each, 0)).toBeCloseTo(
      Number(worth(state, 'feed-needed', on, null)),
      8,
    );
  });

  test('is not known while a group of an unknown kind eats with the rest', () => {
    const groups = [
      group({ arrived: hatched }),
      group({ arrived: hatched, name: 'odd', kind: 'speckled', line: 2 }),
    ];
    expect(worth(stateOf({ on, groups, settings: told(on, 40) }), 'bags-to-buy', on, null)).toBeNull();
  });
});
