import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../engine/day.ts';
import type { Loss, State } from '../../../engine/types.ts';
import { group, stateOf } from '../../helpers/state-of.ts';
import { workOut, worth } from '../../helpers/work-out.ts';

const loss = (on: string, count: number): Loss => ({ on, count, cause: 'unknown', line: 7 });
const losses = [loss('2026-05-03', 1), loss('2026-05-10', 2), loss('2026-05-20', 1)];
const state = stateOf({ on: '2026-05-25', groups: [group({ losses })] });

const over = (from: string, to: string, fact: string, of: State = state): number =>
  Number(
    workOut({ ...of, on: to }, to, [{ what: { fact: 'span-from' }, value: from, adds: false }]).step(
      fact,
      'whites',
    ).value,
  );

describe('losses over some days', () => {
  test('count both ends, out of those that were there when they began', () => {
    expect(over('2026-05-10', '2026-05-20', 'lost-asked')).toBe(3);
    expect(over('2026-05-11', '2026-05-19', 'lost-asked')).toBe(0);
    expect(over('2026-05-10', '2026-05-20', 'birds-asked')).toBe(49);
    expect(over('2026-05-10', '2026-05-20', 'share-asked')).toBeCloseTo(3 / 49, 12);
  });

  test('are all of them where no days are asked about', () => {
    expect(worth(state, 'lost-asked')).toBe(4);
    expect(worth(state, 'birds-asked')).toBe(50);
    expect(worth(state, 'expected-asked')).toBe(worth(state, 'expected-losses'));
    expect(worth(state, 'chance-asked')).toBe(worth(state, 'loss-chance'));
    expect(worth(state, 'asks-span')).toBe('no');
  });

  test('before they came are none, and none are usual', () => {
    expect(over('2026-04-01', '2026-05-01', 'lost-asked')).toBe(0);
    expect(over('2026-04-01', '2026-05-01', 'expected-asked')).toBe(0);
  });

  test('are sure to reach none', () => {
    expect(over('2026-05-11', '2026-05-19', 'chance-asked')).toBe(1);
  });
});

test('two runs of days, one behind the other, add up to both together', () => {
  const days = fc.integer({ min: 1, max: 20 });
  fc.assert(
    fc.property(days, days, (first, second) => {
      const begin = '2026-05-02';
      const middle = addDays(begin, first);
      const end = addDays(middle, second);
      for (const fact of ['lost-asked', 'expected-asked']) {
        const parts = over(begin, middle, fact) + over(addDays(middle, 1), end, fact);
        expect(parts).toBeCloseTo(over(begin, end, fact), 9);
      }
    }),
    { numRuns: 40 },
  );
});
