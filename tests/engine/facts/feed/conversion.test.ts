/** Feed for each unit of live weight, by hand from daily records. */
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../../engine/day.ts';
import type { Feeding, Group, State } from '../../../../engine/types.ts';
import { group, stateOf } from '../../../helpers/state-of.ts';
import { workOut, worth } from '../../../helpers/work-out.ts';

const arrived = '2026-05-02';
const on = '2026-05-22';
/** Twenty days of 2 kg each, 40 kg in all, but for the days left out. */
const feedings = (leftOut = 0): Feeding[] =>
  Array.from({ length: 20 - leftOut }, (_, n) => ({
    on: addDays(arrived, n),
    line: 10 + n,
    mass: 2,
    group: 'whites',
  }));
const state = (given: Partial<State> = {}, birds: Partial<Group> = {}): State =>
  stateOf({ on, groups: [group(birds)], feedings: feedings(), ...given });
const conversion = (of: State) => Number(worth(of, 'feed-conversion'));

describe('feed conversion', () => {
  test('is the feed on record divided by the live weight of those alive', () => {
    const live = Number(worth(state(), 'live-weight'));
    expect(conversion(state())).toBeCloseTo(40 / (50 * live), 9);
    expect(conversion(state({}, { losses: [{ on, line: 60, count: 10, cause: 'unknown' }] }))).toBeCloseTo(
      40 / (40 * live),
      9,
    );
  });

  test('leaves today out, which may still get more', () => {
    const today: Feeding = { on, line: 70, mass: 5, group: 'whites' };
    expect(conversion(state({ feedings: [...feedings(), today] }))).toBeCloseTo(conversion(state()), 9);
  });

  test('takes days without a record as the tables have them, and says so', () => {
    const step = workOut(state({ feedings: feedings(2) })).step('feed-conversion', 'whites');
    const live = Number(worth(state(), 'live-weight'));
    const expected = ['2026-05-20', '2026-05-21'].reduce(
      (sum, day) => sum + Number(worth(state({ feedings: [] }), 'feed-table-day', day)) * 50,
      0,
    );
    expect(Number(step.value)).toBeCloseTo((36 + expected) / (50 * live), 3);
    expect(step.assumed).toEqual([
      {
        id: 'days-without-feed-record',
        group: 'whites',
        values: { days: { value: 2, unit: 'day' }, from: { value: arrived, unit: 'date' } },
      },
    ]);
  });

  test('is not told from fewer than four days in five', () => {
    expect(worth(state({ feedings: feedings(4) }), 'feed-conversion')).not.toBeNull();
    expect(worth(state({ feedings: feedings(5) }), 'feed-conversion')).toBeNull();
    expect(worth(state({ feedings: feedings(5) }), 'conversion-covered')).toBe(0.75);
  });

  test('is not told once some were processed, whose live weight is not on record', () => {
    const processed = [{ on, line: 80, count: 5, dressed: 9 }];
    expect(worth(state({}, { processed }), 'feed-conversion')).toBeNull();
  });
});

test('by the tables it is what they would have eaten, whatever the records say', () => {
  const byTables = [feedings(), feedings().map((each) => ({ ...each, mass: 4 }))].map((given) =>
    Number(worth(state({ feedings: given }), 'conversion-expected')),
  );
  expect(byTables[0]).toBeGreaterThan(1);
  expect(byTables[1]).toBe(byTables[0]);
});
