import { describe, expect, test } from 'vitest';
import type { Loss } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { worth } from '../../helpers/work-out.ts';

let line = 100;
const loss = (on: string, count: number): Loss => ({ on, count, cause: 'unknown', line: line++ });

// Hatched on 1 May: week 1 of their life ends with 7 May.
const state = stateOf({
  on: '2026-05-25',
  groups: [
    group({
      losses: [loss('2026-05-03', 1), loss('2026-05-07', 1), loss('2026-05-08', 1), loss('2026-05-20', 4)],
    }),
  ],
});

describe('losses by week of life', () => {
  test('name each week that had any', () => {
    expect(worth(state, 'lost-by-week')).toBe('week-1=2 week-2=1 week-3=4');
  });

  test('name no week where nothing was lost', () => {
    expect(worth(stateOf(), 'lost-by-week')).toBe('');
    expect(worth(stateOf(), 'worst-week')).toBeNull();
  });

  test('have their worst week where most were lost beyond the usual', () => {
    expect(worth(state, 'worst-week')).toBe(3);
    expect(worth(state, 'lost-in-worst-week')).toBe(4);
  });

  test('hold it against the table: an eighth of 8 % falls in the three weeks from the eighth day', () => {
    // losses/pattern has 0.25 at 7 days and 0.375 at 28, so a third of 0.125 of 8 % of 50 birds in week 3.
    expect(worth(state, 'usual-in-worst-week')).toBeCloseTo((50 * 0.08 * 0.125) / 3, 10);
  });
});
